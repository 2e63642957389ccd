import type { CourseModel } from "./courseModel.ts";
import { FINISHED, NOTHING_SOLD, SALVAGED } from "./leafTables.ts";
import { normals } from "./normals.ts";
import { randomBits } from "./randomBits.ts";

/** Draws made at a time: their random numbers stay in the fastest memory. */
const BLOCK = 256;

/**
 * Plays a course so many times. Nothing is allocated for a draw, and what a draw needs of the tables is a step each: one random word for class and tree, one
 * for each group of the rest, normals only for the sums.
 * @param margins filled to its end
 * @param hours filled too; null where only the margin is asked for: then neither minutes nor speed are drawn
 */
export function drawCourse(
  model: CourseModel,
  seed: number,
  margins: Float64Array,
  hours: Float64Array | null = null,
): void {
  const source = randomBits(seed);
  const fillNormals = normals(randomBits(seed ^ 0x5bd1e995));
  const words = model.rest.groups + 2;
  const bits = new Uint32Array(BLOCK * words);
  const scores = new Float64Array(BLOCK * (hours ? 4 : 2));
  for (let from = 0; from < margins.length; from += BLOCK) {
    source.fill(bits);
    fillNormals(scores);
    drawBlock(model, bits, scores, from, Math.min(margins.length, from + BLOCK), margins, hours);
  }
}

function drawBlock(
  model: CourseModel,
  bits: Uint32Array,
  scores: Float64Array,
  from: number,
  to: number,
  margins: Float64Array,
  hours: Float64Array | null,
): void {
  const { cells, leafOf, classOf, leaves, rest, shared, sales } = model;
  const { groups, early, earlyGroups, slots, shift, lowBits, threshold, alias, ends, told: restTold } = rest;
  const [low, high] = shared;
  const words = groups + 2;
  const earlySlots = earlyGroups * slots;
  const finished = sales[FINISHED]!;
  const finishedTakings = finished.takings[0]!;
  const timed = hours !== null;
  const speedCentre = Math.log(model.speedFactor) - model.speedSpread ** 2 / 2;
  const stride = timed ? 4 : 2;
  for (let i = from; i < to; i++) {
    let word = (i - from) * words;
    const first = bits[word]!;
    const slot = first >>> cells.shift;
    const cell = (first & cells.lowBits) < cells.threshold[slot]! ? slot : cells.alias[slot]!;
    const leaf = leafOf[cell]!;
    let sold = leaves.sold[leaf]!;
    let money = leaves.money[leaf]!;
    let moneyVariance = leaves.moneyVariance[leaf]!;
    let minutes = leaves.minutes[leaf]!;
    let minutesVariance = leaves.minutesVariance[leaf]!;
    let told = leaves.told[leaf]!;
    if (sold === FINISHED) {
      const table = classOf[cell]! * groups * slots;
      let beganMoney = 0;
      let beganVariance = 0;
      let beganMinutes = 0;
      let beganMinutesVariance = 0;
      let asked = 0;
      for (let start = 0; start < groups * slots; start += slots) {
        const drawn = bits[++word]!;
        const own = start + (drawn >>> shift);
        const k = (drawn & lowBits) < threshold[table + own]! ? own : start + alias[table + own]!;
        if (start < earlySlots) {
          beganMoney += early.money[k]!;
          beganVariance += early.moneyVariance[k]!;
          beganMinutes += early.minutes[k]!;
          beganMinutesVariance += early.minutesVariance[k]!;
        }
        if (ends[k] === 1) {
          sold = SALVAGED;
          money = leaves.end.money[leaf]! + beganMoney + rest.money[k]!;
          moneyVariance = leaves.end.moneyVariance[leaf]! + beganVariance + rest.moneyVariance[k]!;
          minutes = leaves.end.minutes[leaf]! + beganMinutes + rest.minutes[k]!;
          minutesVariance =
            leaves.end.minutesVariance[leaf]! + beganMinutesVariance + rest.minutesVariance[k]!;
          asked = 0;
          break;
        }
        money += rest.money[k]!;
        moneyVariance += rest.moneyVariance[k]!;
        told += restTold[k]!;
        asked |= rest.shared[k]!;
        if (!timed) continue;
        minutes += rest.minutes[k]!;
        minutesVariance += rest.minutesVariance[k]!;
      }
      asked &= ~leaves.used[leaf]!;
      if (asked !== 0) {
        const a = asked & 255;
        const b = asked >> 8;
        money += low.money[a]! + high.money[b]!;
        moneyVariance += low.moneyVariance[a]! + high.moneyVariance[b]!;
        minutes += low.minutes[a]! + high.minutes[b]!;
        minutesVariance += low.minutesVariance[a]! + high.minutesVariance[b]!;
      }
    } else if (sold !== NOTHING_SOLD) {
      // A course that is left has its opening work behind it all the same.
      const table = classOf[cell]! * groups * slots;
      for (let start = 0; start < earlySlots; start += slots) {
        const drawn = bits[++word]!;
        const own = start + (drawn >>> shift);
        const k = (drawn & lowBits) < threshold[table + own]! ? own : start + alias[table + own]!;
        money += early.money[k]!;
        moneyVariance += early.moneyVariance[k]!;
        minutes += early.minutes[k]!;
        minutesVariance += early.minutesVariance[k]!;
      }
    }
    const score = (i - from) * stride;
    let takings = 0;
    if (sold === FINISHED)
      takings = (finishedTakings - told) * Math.exp(finished.logMedian + finished.logSd * scores[score]!);
    else {
      const { lots, takings: byLot, logMedian, logSd } = sales[sold]!;
      const last = bits[(i - from) * words + groups + 1]!;
      const lot = last >>> lots.shift;
      const average = byLot[(last & lots.lowBits) < lots.threshold[lot]! ? lot : lots.alias[lot]!]!;
      if (average > 0) takings = average * Math.exp(logMedian + logSd * scores[score]!);
    }
    const z = scores[score + 1]!;
    margins[i] =
      takings === 0 && money > 0
        ? -logNormalAt(money, moneyVariance, z)
        : takings - money - Math.sqrt(moneyVariance) * z;
    if (!timed) continue;
    const work = minutes + Math.sqrt(minutesVariance) * scores[score + 2]!;
    const speed = Math.exp(speedCentre + model.speedSpread * scores[score + 3]!);
    hours[i] = (speed * work + model.otherMinutes) / 60;
  }
}

/** A log-normal of a given mean and variance at a normal score: what is only paid out, as the engine has it. */
function logNormalAt(mean: number, variance: number, z: number): number {
  const logVariance = Math.log1p(variance / (mean * mean));
  return mean * Math.exp(Math.sqrt(logVariance) * z - logVariance / 2);
}
