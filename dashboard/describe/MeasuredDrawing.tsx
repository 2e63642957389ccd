import type { Check, Measurement } from "../api/types.ts";
import { limitsOn, neededAt } from "../checks/limits.ts";
import { ChainDrawing } from "../drawings/ChainDrawing.tsx";
import { elongation, lengthAt } from "../drawings/chainRuler.ts";
import { DropoutDrawing } from "../drawings/DropoutDrawing.tsx";
import { derivedValue, possibleReadings, type Readings, ratioOf } from "../drawings/derived.ts";
import { dropoutScene } from "../drawings/dropouts.ts";
import { Gauge } from "../drawings/Gauge.tsx";
import { StringTestDrawing } from "../drawings/StringTestDrawing.tsx";
import { stringScene } from "../drawings/stringTest.ts";
import { lengthUnit } from "../state/units.ts";
import {
  chainLimit,
  chainTitle,
  dropoutNote,
  dropoutTitle,
  stringNote,
  stringTitle,
} from "../words/measured.ts";
import type { Bike } from "./bike.ts";

interface DrawingProps {
  readonly check: Check;
  readonly measurement: Measurement;
  readonly readings: Readings;
  readonly bike: Bike;
}

/** What was measured, drawn as it is typed: the thing itself where there is a drawing of it, and the reading on the scale of levels. */
export function MeasuredDrawing(props: DrawingProps) {
  const { check, measurement, bike } = props;
  const readings = possibleReadings(measurement, props.readings);
  const limits = limitsOn(measurement, bike.attributes);
  return (
    <div class="drawn">
      <Thing {...props} readings={readings} />
      {limits.length > 0 && (
        <Gauge
          check={check}
          limits={limits}
          value={derivedValue(measurement, readings)}
          readingError={measurement.readingError}
          unit={measurement.unit}
          lengths={lengthUnit.value}
        />
      )}
    </div>
  );
}

/** Whether the thing measured is drawn from these readings, so that the drawing of how it is done may go. */
export function isDrawn({ measurement }: Pick<Check, "measurement">, readings: Readings): boolean {
  const kind = measurement?.derivation.kind;
  const hasDrawing = kind === "string-test" || kind === "elongation" || kind === "absolute-difference";
  return hasDrawing && derivedValue(measurement!, possibleReadings(measurement!, readings)) !== undefined;
}

function Thing({ check, measurement, readings, bike }: DrawingProps) {
  const unit = lengthUnit.value;
  const { derivation } = measurement;
  if (derivation.kind === "string-test") {
    const { left, right } = readings;
    if (left === undefined || right === undefined) return null;
    const reading = { left, right, ratio: ratioOf(readings, derivation.defaultRatio) };
    const scene = stringScene(reading);
    return (
      <Figure title={stringTitle(scene, unit)} note={stringNote(scene)}>
        <StringTestDrawing reading={reading} unit={unit} />
      </Figure>
    );
  }
  if (derivation.kind === "elongation") {
    const [length] = Object.values(readings);
    if (length === undefined) return null;
    const chain = { ...derivation, length };
    const needed = neededAt(check, bike.rearSprockets);
    const note = needed === null ? "" : chainLimit(needed, lengthAt(needed, chain), bike.rearSprockets, unit);
    return (
      <Figure title={chainTitle(length, chain.pitches, elongation(chain), unit)} note={note}>
        <ChainDrawing
          reading={chain}
          limits={limitsOn(measurement, bike.attributes).flatMap(({ from }) => from ?? [])}
          needed={needed}
          unit={unit}
        />
      </Figure>
    );
  }
  if (derivation.kind === "absolute-difference") {
    const [spacing, hub] = derivation.of.map((id) => readings[id]);
    if (!spacing || !hub) return null;
    const scene = dropoutScene(spacing, hub);
    return (
      <Figure title={dropoutTitle(scene, unit)} note={dropoutNote(scene)}>
        <DropoutDrawing spacing={spacing} hub={hub} unit={unit} />
      </Figure>
    );
  }
  return null;
}

function Figure(props: { title: string; note: string; children: preact.JSX.Element }) {
  return (
    <figure>
      <div class="pic">{props.children}</div>
      <figcaption>
        <b>{props.title}.</b> {props.note}
      </figcaption>
    </figure>
  );
}
