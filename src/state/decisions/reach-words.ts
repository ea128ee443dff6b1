// How far a drop reaches, in a sentence that names the number it turns on, and each limit in words.

import { runDropId, editOf } from '../../shop/decisions/choice.ts';
import type { ReachLimit } from '../../shop/decisions/reach.ts';
import { reachSentence } from '../../shop/decisions/reach-sentence.ts';
import type { Shop } from '../../shop/schema/shop-schema.ts';
import { sectionLabelInside } from '../../shop/section-label.ts';
import type { DropReport } from '../../shop/state-report.ts';
import { ownPipeWord } from '../../shop/verdict-words.ts';
import { formatQuantity } from '../../units/format.ts';
import type { Quantity, UnitSystem } from '../../units/quantity.ts';
import { pipeInWords } from './pipe-words.ts';
import type { ReachAnswer, ReachQuestion } from './question.ts';

/** The words of one answer: the shop as it was asked about, and the units. */
export interface ReachSpeech {
  readonly shop: Shop;
  /** The shop with the run in it, whose sections the limits name. */
  readonly edited: Shop;
  readonly system: UnitSystem;
}

/**
 * Readies the words of an answer.
 *
 * @param question - what was asked
 * @param system - the units to speak in
 * @returns what the words are made with
 */
export function reachSpeech({ shop, run, length }: ReachQuestion, system: UnitSystem): ReachSpeech {
  return { shop, edited: editOf({ kind: 'run', run, length })(shop), system };
}

/**
 * The answer in words.
 *
 * @param question - what was asked
 * @param answer - what came of it
 * @param speech - names and units
 * @returns how far it reaches, and what it gets at the wanted length
 */
export function reachAnswerWords(
  question: ReachQuestion,
  { reach, sizes }: ReachAnswer,
  speech: ReachSpeech,
): string {
  const first = reachSentence(speech.edited, reach, speech.system);
  const { pipe } = question.run;
  const own = sizes.sizes.find(({ size }) => pipe.kind === 'catalogue' && pipe.size === size.id);
  if (own === undefined) return first;
  const wanted = show(speech, 'length', question.length);
  const { drop } = own;
  const flow = show(speech, 'flow', drop.flow);
  return `${first} At the ${wanted} wanted it gets ${flow}${verdictClause(drop, speech)}.`;
}

/** What to say of a drop behind its flow. */
function verdictClause(drop: DropReport, speech: ReachSpeech): string {
  switch (drop.verdict) {
    case 'settles': {
      const where = place(speech, drop.slowest.section);
      return `, but its chips settle in ${where} at ${show(speech, 'velocity', drop.slowest.velocity)}`;
    }
    case 'short':
      return `, short of the ${show(speech, 'flow', drop.need ?? 0)} that it needs`;
    case 'tight':
      return ` and carries; ${show(speech, 'velocity', drop.velocity)} in its own ${ownPipeWord(speech.edited, drop)} throttles the collector`;
    case 'carries':
      return ' and carries';
    case 'shut':
      return '';
    default:
      return drop.verdict satisfies never;
  }
}

/**
 * What a row of the sizes stands for.
 *
 * @param question - what was asked
 * @param size - id of the size
 * @param speech - names and units
 * @returns such as 'Lathe 10 ft further in 5 in. pipe'
 */
export function runInWords(question: ReachQuestion, size: string, speech: ReachSpeech): string {
  const { run, family, length } = question;
  const id = runDropId(run.target);
  const name = speech.edited.drops.find((drop) => drop.id === id)?.name ?? id;
  const pipe = pipeInWords({ kind: 'catalogue', family, size }, speech.system);
  const added = show(speech, 'length', length);
  return run.target.kind === 'new'
    ? `${name} on ${added} of ${pipe}`
    : `${name} ${added} further in ${pipe}`;
}

/** What begins or ends at a limit. */
const LIMIT_WORDS: Readonly<Record<ReachLimit['kind'], readonly [begins: string, ends: string]>> = {
  need: ['gets less than it needs', 'gets what it needs again'],
  settles: ['chips settle', 'chips are carried again'],
  tight: ['too fast, throttles the collector', 'no longer too fast'],
  'below the points': ['the curve is only continued, before its first point', 'within the points'],
  'above the points': ['the curve is only continued, beyond its last point', 'within the points'],
  'left of the peak': ['left of the curve’s peak, unsteady', 'right of the curve’s peak again'],
};

/**
 * What happens at a limit.
 *
 * @param limit - one of the limits
 * @returns a few words
 */
export function limitWords({ kind, effect, leaps }: ReachLimit): string {
  const words = LIMIT_WORDS[kind][effect === 'begins' ? 0 : 1];
  return leaps ? `${words}; the collector leaps to another operating point` : words;
}

/**
 * Where a limit is met.
 *
 * @param speech - names
 * @param section - id of the section, or undefined where it is no matter of one
 * @returns the section's name, or 'the collector'
 */
export function place({ edited }: ReachSpeech, section: string | undefined): string {
  if (section === undefined) return 'the collector';
  return sectionLabelInside(edited.sections.find(({ id }) => id === section) ?? { id: section });
}

function show({ system }: ReachSpeech, quantity: Quantity, si: number): string {
  return formatQuantity(quantity, system, si).text;
}
