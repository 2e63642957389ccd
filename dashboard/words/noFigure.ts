/** Why a find stands without a figure. */
export const NO_FIGURE = "No figure is worked out.";
export const STOPPED_NO_FIGURE = "stopped: no figure";
export const ONLY_LEAVING = "no course but leaving is open";
export const NO_RATE = `${ONLY_LEAVING}, so there is no rate to show.`;

/** "The grey one: stopped.", before the reason. */
export function stoppedFind(name: string): string {
  return `${name}: stopped.`;
}
