import { ownTask } from "../parts/ownTask.ts";

/** What is drawn on a canvas, and drawn anew when its settings change. */
export interface Drawn<Settings> {
  show(settings: Settings, glide: boolean): void;
  destroy(): void;
}

let lastMoment: Promise<void> = Promise.resolve();

/** Comes in a task of its own, after all that were asked for before: between two drawings the page answers. */
function ownMoment(): Promise<void> {
  lastMoment = lastMoment.then(ownTask);
  return lastMoment;
}

type Create<Settings> = (canvas: HTMLCanvasElement) => Drawn<Settings>;

/**
 * A drawing whose script comes apart from the page's: names and figures stand before it, and it shows the newest settings
 * once it is there. Where its script did not come, it is asked for again with the next settings.
 */
export function drawnLater<Settings>(load: () => Promise<Create<Settings>>): Create<Settings> {
  return (canvas) => {
    let drawn: Drawn<Settings> | null = null;
    let newest: Settings | null = null;
    let gone = false;
    let loading = false;

    async function begin(): Promise<void> {
      if (loading) return;
      loading = true;
      try {
        const create = await load();
        await ownMoment();
        if (gone || newest === null) return;
        drawn = create(canvas);
        drawn.show(newest, false);
      } catch {
        loading = false;
      }
    }

    return {
      show(settings, glide) {
        newest = settings;
        if (drawn === null) void begin();
        else drawn.show(settings, glide);
      },
      destroy() {
        gone = true;
        drawn?.destroy();
      },
    };
  };
}
