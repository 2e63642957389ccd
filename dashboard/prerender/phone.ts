/** What pages ask of a browser while they are drawn, as a phone would answer: imported before any of them. */
Object.assign(globalThis, {
  innerWidth: 390,
  location: { hash: "" },
  screen: { width: 390, height: 844 },
  matchMedia: (query: string) => ({ matches: query.includes("pointer: coarse") }),
  addEventListener: () => {},
  removeEventListener: () => {},
});
