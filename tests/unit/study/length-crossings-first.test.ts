import { testLengths } from './sweep-lengths.ts';

testLengths('first');
