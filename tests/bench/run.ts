import { readdirSync } from "node:fs";
import { availableParallelism, cpus } from "node:os";
import { fileURLToPath } from "node:url";
import type { AnyBench, Bench, ScoreBench } from "./bench.ts";
import { measure, type Timing } from "./measure.ts";

/**
 * Runs every `*.bench.ts` beside it (those whose name holds the first argument, where one is given) and prints this
 * machine's times, each with its ratio to the bench's first candidate, measured in the same rounds; of a bench of accuracy, the mean scores, each with
 * its ratio to the best rival of the first; of a bench with floors, its own lines. Ends with 1 where a candidate takes more times as long as the first than its
 * bench allows, where a rival foretells better, or where a floor is not kept.
 */
async function runBenches(wanted: string): Promise<void> {
  console.log(
    `${cpus()[0]?.model ?? "unknown processor"}, ${availableParallelism()} cores, Node ${process.version}`,
  );
  const names = readdirSync(fileURLToPath(new URL(".", import.meta.url)))
    .filter((name) => name.endsWith(".bench.ts") && name.includes(wanted))
    .sort();
  for (const name of names) {
    const { default: bench }: { default: AnyBench } = await import(`./${name}`);
    if ("tables" in bench) {
      printScores(bench);
      continue;
    }
    if ("run" in bench) {
      console.log(`\n${bench.title}`);
      if (!(await bench.run((line) => console.log(`  ${line}`)))) process.exitCode = 1;
      continue;
    }
    print(bench, await measure(bench.candidates, bench.effort));
    await bench.close?.();
  }
}

function print({ title, mostTimesTheFirst = {} }: Bench, timings: readonly Timing[]): void {
  const yardstick = timings[0]?.median ?? Number.NaN;
  const width = Math.max(...timings.map(({ name }) => name.length));
  console.log(`\n${title}`);
  for (const { name, median, fastest, slowest } of timings) {
    const ratio = median / yardstick;
    const most = mostTimesTheFirst[name] ?? Number.POSITIVE_INFINITY;
    const kept = ratio <= most;
    const verdict = kept ? "" : `: more than x ${most}`;
    if (!kept) process.exitCode = 1;
    console.log(
      `  ${name.padEnd(width)}  ${shown(median)}  (${shown(fastest)} to ${shown(slowest)})  x ${ratio.toFixed(2)}${verdict}`,
    );
  }
}

function printScores({ title, tables }: ScoreBench): void {
  console.log(`\n${title}`);
  for (const { name, scores } of tables) {
    console.log(`  ${name}${scores ? "" : ": data not at hand"}`);
    const [ours, ...rivals] = scores?.() ?? [];
    if (ours === undefined) continue;
    const best = Math.min(...rivals.map(({ mean }) => mean));
    if (ours.mean > best) process.exitCode = 1;
    const width = Math.max(...[ours, ...rivals].map((one) => one.name.length));
    for (const { name: of, mean } of [ours, ...rivals]) {
      const verdict = of === ours.name && mean > best ? ": a rival is better" : "";
      console.log(`    ${of.padEnd(width)}  ${mean.toFixed(4)}  x ${(mean / best).toFixed(4)}${verdict}`);
    }
  }
}

/** A time in the unit that suits it, three figures. */
function shown(microseconds: number): string {
  return microseconds < 1000
    ? `${microseconds.toPrecision(3)} µs`
    : `${(microseconds / 1000).toPrecision(3)} ms`;
}

await runBenches(process.argv[2] ?? "");
