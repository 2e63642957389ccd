import { computed } from "@preact/signals";
import { openOwnPrices } from "../ownPrices/store.ts";
import { vocabularyOf } from "../ownPrices/vocabulary.ts";
import { reference } from "./reference.ts";
import { browserStore, shelf } from "./shelf.ts";

/** The user's own sales and prices. They stay in this browser. */
export const ownPrices = openOwnPrices(shelf(browserStore(), "spokeworth.prices"));

/** The words they may use; null until the catalogue has come. */
export const vocabulary = computed(() => (reference.value === null ? null : vocabularyOf(reference.value)));
