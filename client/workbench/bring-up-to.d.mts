export function bringUpTo(texts: Readonly<Record<string, string>>, today: string): Record<string, string>;
