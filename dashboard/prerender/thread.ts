import { parentPort } from "node:worker_threads";
import { firstSights } from "./firstSights.tsx";

// The entry of a thread of its own: what the pages ask of a browser is put in place there and nowhere else.
parentPort?.postMessage(await firstSights());
