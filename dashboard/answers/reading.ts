import type { Check, Observation, Reading } from "../api/types.ts";

/** The observation of front and rear apart. */
export type PerWheel = { readonly front?: Reading | undefined; readonly rear?: Reading | undefined };

export function isPerWheel(observation: Observation): observation is PerWheel {
  return "front" in observation || "rear" in observation;
}

/** A reading without what says nothing; null where nothing is left. */
export function pruned(reading: Reading): Reading | null {
  const { level, measured, flags } = reading;
  const left: Reading = {
    ...(level === undefined ? {} : { level }),
    ...(measured === undefined || Object.keys(measured).length === 0 ? {} : { measured }),
    ...(flags === undefined || flags.length === 0 ? {} : { flags }),
  };
  return Object.keys(left).length === 0 ? null : left;
}

/** A reading as it can be sent: a measurement that still lacks a needed input is left out. Null where nothing is left. */
export function sendable(reading: Reading, check: Pick<Check, "measurement">): Reading | null {
  const { measured, ...rest } = reading;
  const needed = check.measurement?.inputs.filter(({ optional }) => !optional) ?? [];
  const whole = measured !== undefined && needed.every(({ id }) => measured[id] !== undefined);
  return pruned(whole ? reading : rest);
}

/** An observation as it can be sent, whole bike or per wheel. Null where nothing is left. */
export function sendableObservation(observation: Observation, check: Check): Observation | null {
  if (!isPerWheel(observation)) return sendable(observation, check);
  const front = observation.front === undefined ? null : sendable(observation.front, check);
  const rear = observation.rear === undefined ? null : sendable(observation.rear, check);
  if (front === null && rear === null) return null;
  return { ...(front === null ? {} : { front }), ...(rear === null ? {} : { rear }) };
}
