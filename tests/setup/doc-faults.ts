// What a doc comment of the core lacks: a unit in brackets on each number in and each number out.
import { type ExportedFunction, exportedFunctions, type Parameter } from './read-functions.ts';
import type { SourceFile } from './source-files.ts';

/** A bracket that holds a unit: `[Pa]`, `[m³/s]`, `[1/s]`, `[-]`; not a range such as `[0, 1]`. */
const unit = /\[(?:-|any|(?:1\/)?[°%\p{L}][^\],]*)\]/gu;
const numeric = /\bnumber\b|\bFloat(?:32|64)Array\b/;

export function docFaults(file: SourceFile): string[] {
  const seen = new Set<string>();
  return exportedFunctions(file).flatMap((found) => {
    if (seen.has(found.name)) return []; // the body below its overloads
    seen.add(found.name);
    return faultsOf(found).map((fault) => `${file.path} ${found.name}: ${fault}`);
  });
}

function faultsOf(found: ExportedFunction): string[] {
  if (found.doc === '') return ['has no doc comment'];
  const tags = readTags(found.doc);
  const faults = found.parameters.flatMap((parameter, index) =>
    parameterFaults(parameter, index, tags),
  );
  if (found.parameters.some(({ type }) => type === 'boolean')) faults.push('takes a boolean');
  if (found.returns === '') faults.push('does not write its return type');
  if (isNumeric(found.returns) && units(tags.returns.join(' ')) === 0) {
    faults.push('@returns has no unit in brackets');
  }
  return faults;
}

function parameterFaults(parameter: Parameter, index: number, tags: Tags): string[] {
  const needed = numbersIn(parameter.type);
  if (needed === 0) return [];
  const name = /^\w+$/.test(parameter.name) ? parameter.name : (tags.names[index] ?? '');
  const given = tags.parameters
    .filter((tag) => tag.name === name || tag.name.startsWith(`${name}.`))
    .reduce((sum, tag) => sum + units(tag.text), 0);
  return given >= needed ? [] : [`@param ${parameter.name} has no unit in brackets`];
}

interface Tags {
  readonly parameters: readonly { readonly name: string; readonly text: string }[];
  /** Names of the whole parameters, in order; `place.altitude` belongs to `place`. */
  readonly names: readonly string[];
  readonly returns: readonly string[];
}

function readTags(doc: string): Tags {
  const tags = doc.split(/^\s*@/m).slice(1);
  const parameters = tags
    .filter((tag) => tag.startsWith('param '))
    .map((tag) => ({ name: /^param\s+([\w.]+)/.exec(tag)?.[1] ?? '', text: tag }));
  return {
    parameters,
    names: [...new Set(parameters.map(({ name }) => name.replace(/\..*/, '')))],
    returns: tags.filter((tag) => /^returns?\s/.test(tag)),
  };
}

const units = (text: string) => [...text.matchAll(unit)].length;

const isNumeric = (type: string) => numeric.test(type) && !type.includes('=>');

/** One for a number or an array of them; one for each numeric field of an object written out. */
function numbersIn(type: string): number {
  if (!isNumeric(type)) return 0;
  if (!type.startsWith('{')) return 1;
  return type.split(/[;,]/).filter((field) => numeric.test(field)).length;
}
