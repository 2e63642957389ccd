import { useCallback } from "preact/hooks";
import { bikeOf, checksOn } from "../describe/bike.ts";
import { useKeys } from "../parts/useKeys.ts";
import type { FindAsking } from "../state/finds.ts";
import { ownFinds } from "../state/finds.ts";
import { handling } from "../state/handling.ts";
import { termsOf } from "../state/terms.ts";
import { WORKING } from "../words/common.ts";
import { SPOT_DECIDE } from "../words/spotTexts.ts";
import { BearInMind } from "./BearInMind.tsx";
import { CautionCard } from "./CautionCard.tsx";
import { EndPanel } from "./EndPanel.tsx";
import { Gloves, Handles } from "./Handles.tsx";
import { LookCard } from "./LookCard.tsx";
import { LooksHead } from "./LooksHead.tsx";
import type { StageProps } from "./OnTheSpot.tsx";
import { SeenLooks } from "./SeenLooks.tsx";
import { SpotBar } from "./SpotBar.tsx";
import { SpotTrouble } from "./SpotTrouble.tsx";
import { StillOpen } from "./StillOpen.tsx";
import { StoppedCard } from "./StoppedCard.tsx";
import { trails } from "./state.ts";
import { told } from "./told.ts";
import { type LookStep, looksOf } from "./trail.ts";
import { UndoLine } from "./UndoLine.tsx";
import { useLooking } from "./useLooking.ts";

/** One look at a time, with the verdict at the foot. */
export function Looks(props: StageProps & { asking: FindAsking }) {
  const { own, known, goal: wished, trail, asking, acted } = props;
  const bike = bikeOf(own.answers, known);
  const checks = checksOn(bike, known);
  const { id } = own;
  const onOffer = useCallback(
    (step: LookStep, offerAfter: number) => {
      const noted = trails.of(id).map((one) => (one === step ? { ...step, offerAfter } : one));
      const finds = ownFinds.all.peek().map((find) => find.id);
      trails.put(id, noted, finds);
    },
    [id],
  );
  const looking = useLooking({ ...props, checks, onOffer });
  const { sight, look, decided } = looking;
  const keys = handling.value.keys;
  useKeys(keys, { undo: looking.undo });

  const appraisal = asking.answer.value;
  const { goal, price, paid } = termsOf(asking, wished);
  const last = trail.at(-1);
  const lastTold = last === undefined ? null : told(last, known, appraisal);
  const check = known.checks.find((one) => one.id === look?.check);
  const looks = looksOf(trail);
  const stage = { known, checks, appraisal, looking, looks, trail };
  return (
    <>
      <main class={handling.value.gloves ? "page spot gloved" : "page spot"} id="main">
        <LooksHead
          {...props}
          checks={checks}
          isStopped={sight === "stopped"}
          focus={acted && sight !== "card"}
        />
        <div class="spotgrid">
          <div class="spotmain">
            {lastTold !== null && (
              <UndoLine onUndo={looking.undo}>
                <b>{lastTold.found}</b> {lastTold.offer}
              </UndoLine>
            )}
            <SpotTrouble asking={asking} known={known} look={sight === "card" ? look : null} />
            {sight === "waiting" && (
              <p class="working" role="status">
                {asking.status.value === "slow" ? WORKING : ""}
              </p>
            )}
            {sight === "stopped" && appraisal !== null && <StoppedCard appraisal={appraisal} own={own} />}
            {sight === "caution" && appraisal !== null && <CautionCard {...stage} appraisal={appraisal} />}
            {sight === "card" && look !== null && check !== undefined && (
              <LookCard
                key={`${look.check} ${look.position}`}
                check={check}
                look={look}
                own={own}
                asking={asking}
                looking={looking}
                focus={acted}
                keys={keys}
                bike={bike}
                currency={known.currency}
              />
            )}
            {sight === "end" && <EndPanel {...stage} own={own} goal={goal} price={price} paid={paid} />}
            {sight === "card" && (
              <div class="under">
                <Gloves />
                <button type="button" class="plainbtn" onClick={() => looking.decide(true)}>
                  {SPOT_DECIDE}
                </button>
              </div>
            )}
            {appraisal !== null && sight !== "stopped" && (
              <BearInMind appraisal={appraisal} at={trail.length} />
            )}
          </div>
          <div class="spotside">
            {looks.length > 0 && <SeenLooks {...stage} />}
            {(sight === "card" || sight === "end") && <StillOpen {...stage} />}
            <Handles {...props} />
          </div>
        </div>
      </main>
      <SpotBar
        asking={asking}
        goal={goal}
        price={price}
        paid={paid}
        decided={decided}
        last={last?.kind === "look" ? last : null}
        found={lastTold === null ? "" : lastTold.found}
      />
    </>
  );
}
