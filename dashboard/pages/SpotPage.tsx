import { FINDS_LOOK } from "../words/findsPage.ts";
import "../style/spot.css";
import { CopyButton } from "../find/CopyButton.tsx";
import { OwnFindPage } from "../parts/OwnFindPage.tsx";
import { OnTheSpot } from "../spot/OnTheSpot.tsx";
import { SPOT_TITLE } from "../words/spot.ts";

/** Take it, and for how much? Asked beside the bike: four picks, then one look at a time. */
export function SpotPage() {
  return <OwnFindPage page="spot" title={SPOT_TITLE} begin={FINDS_LOOK} form={OnTheSpot} copy={CopyButton} />;
}
