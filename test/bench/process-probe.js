// Goes into a process of the benchmark's before its own code (`node --require`), and tells what only the process
// itself knows. With a channel to whoever started it, it answers there; without one it writes what it used of
// processor and memory into the file that DAYSTAVE_BENCH_USED names, at the end.
const { writeFileSync } = require("node:fs");
const { performance } = require("node:perf_hooks");
const { getHeapCodeStatistics } = require("node:v8");

/** Milliseconds. Shorter stretches are not kept. */
const SHORT = 4;
/** Stretches for which nothing else got a turn: when each began, since 1970, and how long it was, in milliseconds. */
const blocked = [];

/** Of this process, all its threads, in milliseconds. */
function processorTime() {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

/**
 * By a timer that is due every millisecond. A stretch in which another process had the processor is not counted as
 * ours.
 */
function watchLoop() {
  let last = { at: performance.now(), used: processorTime() };
  setInterval(() => {
    const now = { at: performance.now(), used: processorTime() };
    const time = Math.min(now.at - last.at, now.used - last.used);
    if (time > SHORT) blocked.push({ at: performance.timeOrigin + last.at, time });
    last = now;
  }, 1).unref();
}

const ANSWERS = {
  blocked: () => blocked,
  processorTime,
  /**
   * In bytes, once all that can be collected is, and how many of them are code that V8 compiled; needs --expose-gc.
   */
  heap: () => {
    for (let i = 0; i < 3; i++) global.gc();
    const code = getHeapCodeStatistics();
    return {
      used: process.memoryUsage().heapUsed,
      code: code.code_and_metadata_size + code.bytecode_and_metadata_size,
    };
  },
};

if (process.send) {
  if (process.env.DAYSTAVE_BENCH_LOOP) watchLoop();
  process.on("message", (question) => process.send(ANSWERS[question]()));
  process.channel.unref();
} else if (process.env.DAYSTAVE_BENCH_USED) {
  process.on("exit", () => {
    const used = { time: processorTime(), memory: process.resourceUsage().maxRSS / 1024 };
    writeFileSync(process.env.DAYSTAVE_BENCH_USED, JSON.stringify(used));
  });
}
