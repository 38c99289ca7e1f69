/**
 * Asks a person at the terminal, on standard error. Undefined where there is no answer: they pressed Ctrl+C, or
 * Ctrl+D.
 */
export async function question(text: string): Promise<string | undefined> {
  const { createInterface } = await import("node:readline");
  const lines = createInterface({ input: process.stdin, output: process.stderr });
  return new Promise((resolve) => {
    let answer: string | undefined;
    lines.on("close", () => {
      if (answer === undefined) process.stderr.write("\n");
      resolve(answer);
    });
    lines.question(text, (said) => {
      answer = said;
      lines.close();
    });
  });
}
