import { testLengths } from './sweep-lengths.ts';

testLengths('second');
