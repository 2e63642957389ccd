/** The card that the keys answer: the one with the focus inside it, else the one shown first. */
function activeCard(): Element | null {
  const focused = document.activeElement;
  const row = focused?.closest("details.check[open]")?.querySelector("[data-check]");
  return focused?.closest("[data-check]") ?? row ?? document.querySelector(".nexthere [data-check]");
}

/** Presses a level's button, counted from nought: of the wheel with the focus, else of the first wheel not answered, else of the whole bike. */
export function pressLevel(index: number): void {
  const card = activeCard();
  const wheel =
    document.activeElement?.closest(".wheelside") ??
    [...(card?.querySelectorAll(".wheelside") ?? [])].find(
      (side) => side.querySelector('.level[aria-pressed="true"]') === null,
    );
  const buttons = (wheel ?? card)?.querySelectorAll<HTMLButtonElement>("button.level");
  buttons?.[index]?.click();
}

/** Presses "Can't tell". */
export function pressCannotTell(): void {
  activeCard()?.querySelector<HTMLButtonElement>("button.cannot")?.click();
}
