// What a throttle setting comes to, in one line.

import type { Instrument } from '../../curve/throttle-test/point-uncertainty.ts';
import type { Missing, ReducedSetting } from '../../curve/throttle-test/reduce-setting.ts';
import { formatQuantity } from '../../units/format.ts';
import type { Quantity, UnitSystem } from '../../units/quantity.ts';

const INSTRUMENT_WORDS: Readonly<Record<Instrument, string>> = {
  static: 'the manometer at the tap',
  velocity: 'the anemometer',
  velocityPressure: 'the manometer of the Pitot tube',
};

/**
 * A setting in words.
 *
 * @param setting - the reduced setting
 * @param system - the units to speak in
 * @returns such as '1,010 cfm ± 32 cfm at 6.81 in. w.g. ± 0.12 in. w.g.'
 */
export function settingWords(setting: ReducedSetting, system: UnitSystem): string {
  const show = (quantity: Quantity, si: number) => formatQuantity(quantity, system, si).text;
  switch (setting.kind) {
    case 'point': {
      const { steps, uncertainty } = setting;
      const flow = `${show('flow', steps.flow)}${doubt('flow', uncertainty.flow, system)}`;
      const suction = `${show('pressure', steps.suction)}${doubt('pressure', uncertainty.suction, system)}`;
      return `${flow} at ${suction}`;
    }
    case 'bound': {
      const { steps } = setting;
      const flow = `${setting.flow === 'at least' ? 'at least ' : ''}${show('flow', steps.flow)}`;
      const suction =
        setting.suction === 'unknown'
          ? 'suction unknown'
          : `${setting.suction} ${show('pressure', steps.suction)}`;
      return `Over range: ${flow}, ${suction}. Kept as a bound, not used as a point.`;
    }
    case 'incomplete':
      return `Still to be read: ${listed(setting.missing.map(missingWords))}.`;
    case 'impossible': {
      const { velocityPressure, static: suction } = setting.steps;
      return (
        `The speed stands for ${show('pressure', velocityPressure)} of velocity pressure, more than the ` +
        `${show('pressure', suction)} of suction that drives it. One of the two readings is wrong.`
      );
    }
    default:
      return setting satisfies never;
  }
}

/**
 * Which instruments count as exact because nobody stated how exact they are.
 *
 * @param settings - the reduced settings
 * @returns a sentence, empty where all are stated
 */
export function unstatedWords(settings: readonly ReducedSetting[]): string {
  const points = settings.filter((setting) => setting.kind === 'point');
  const unstated = new Set(points.flatMap(({ uncertainty }) => uncertainty.unstated));
  if (unstated.size === 0) return '';
  const names = [...unstated].map((instrument) => INSTRUMENT_WORDS[instrument]);
  const counts = names.length === 1 ? 'it counts' : 'they count';
  return `How exact ${listed(names)} ${names.length === 1 ? 'is' : 'are'} was not stated, so ${counts} as exact: the true doubt is larger.`;
}

function doubt(quantity: Quantity, si: number, system: UnitSystem): string {
  return si > 0 ? ` ± ${formatQuantity(quantity, system, si).text}` : '';
}

function missingWords({ what, count }: Missing): string {
  switch (what) {
    case 'diameter':
      return 'the inside diameter of the pipe';
    case 'static':
      return 'the suction';
    case 'air':
      return count === 1 ? 'one reading of the air' : `${count} readings of the air`;
    default:
      return what satisfies never;
  }
}

function listed(words: readonly string[]): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}
