// Which files and packages a source file takes in, type imports and dynamic imports included.
import { posix } from 'node:path';
import type { SourceFile } from './source-files.ts';

export type Import =
  | { readonly kind: 'file'; readonly path: string }
  | { readonly kind: 'package'; readonly name: string };

const statement = /\b(?:import|export)\b[^'"`;]*?\bfrom\s*(['"])(.+?)\1/g;
const bareOrDynamic = /\bimport\s*\(?\s*(['"])(.+?)\1/g;
const workerAddress = /\bnew URL\(\s*(['"])(\..+?)\1\s*,\s*import\.meta\.url/g;

export function readImports(file: SourceFile): Import[] {
  const specifiers = [statement, bareOrDynamic, workerAddress]
    .flatMap((pattern) => [...file.code.matchAll(pattern)])
    .map((match) => (match[2] ?? '').replace(/\?.*$/, ''));
  return [...new Set(specifiers)].map((specifier) => resolve(file, specifier));
}

function resolve(file: SourceFile, specifier: string): Import {
  if (specifier.startsWith('.')) {
    return { kind: 'file', path: posix.join(posix.dirname(file.path), specifier) };
  }
  const parts = specifier.split('/');
  return { kind: 'package', name: parts.slice(0, specifier.startsWith('@') ? 2 : 1).join('/') };
}
