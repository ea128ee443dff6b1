// Sent by the parts of a form: the pipe, the hood, how something joins, as it is to be. They carry
// values of the document and don't know whose they are; the form does. Arrow keys in a list choose
// one entry after another: such a run of choices is to be undone as one.

import type { Hood } from '../../shop/schema/drop-schema.ts';
import type { Fitting } from '../../shop/schema/fitting-schema.ts';
import type { Pipe, SectionJoin, Transition } from '../../shop/schema/section-schema.ts';
import { DcEvent } from '../dc-event.ts';

export class PipeEvent extends DcEvent {
  static readonly type = 'dc-pipe';
  readonly pipe: Pipe;
  /** Whether it was chosen from a list, not typed. */
  readonly isChoice: boolean;

  constructor(pipe: Pipe, how?: 'choice') {
    super(PipeEvent.type);
    this.pipe = pipe;
    this.isChoice = how === 'choice';
  }
}

export class FittingsEvent extends DcEvent {
  static readonly type = 'dc-fittings';
  readonly fittings: readonly Fitting[];
  /** Place of the fitting of which something was chosen from a list; undefined if it was typed. */
  readonly chosen: number | undefined;

  constructor(fittings: readonly Fitting[], chosen?: number) {
    super(FittingsEvent.type);
    this.fittings = fittings;
    this.chosen = chosen;
  }
}

/** One fitting as it is to be, or undefined where it is to go. */
export class FittingEvent extends DcEvent {
  static readonly type = 'dc-fitting';
  readonly fitting: Fitting | undefined;
  /** Whether it was chosen from a list, not typed. */
  readonly isChoice: boolean;

  constructor(fitting: Fitting | undefined, how?: 'choice') {
    super(FittingEvent.type);
    this.fitting = fitting;
    this.isChoice = how === 'choice';
  }
}

export class JoinEvent extends DcEvent {
  static readonly type = 'dc-join';
  readonly join: SectionJoin;
  /** Whether it was chosen from a list, not typed. */
  readonly isChoice: boolean;

  constructor(join: SectionJoin, how?: 'choice') {
    super(JoinEvent.type);
    this.join = join;
    this.isChoice = how === 'choice';
  }
}

/** A change of diameter, or undefined for the cone that is put in by itself. */
export class ReducerEvent extends DcEvent {
  static readonly type = 'dc-reducer';
  readonly transition: Transition | undefined;
  /** Whether it was chosen from a list, not typed. */
  readonly isChoice: boolean;

  constructor(transition: Transition | undefined, how?: 'choice') {
    super(ReducerEvent.type);
    this.transition = transition;
    this.isChoice = how === 'choice';
  }
}

export class HoodEvent extends DcEvent {
  static readonly type = 'dc-hood';
  readonly hood: Hood;
  /** Whether it was chosen from a list, not typed. */
  readonly isChoice: boolean;

  constructor(hood: Hood, how?: 'choice') {
    super(HoodEvent.type);
    this.hood = hood;
    this.isChoice = how === 'choice';
  }
}

declare global {
  interface HTMLElementEventMap {
    'dc-pipe': PipeEvent;
    'dc-fittings': FittingsEvent;
    'dc-fitting': FittingEvent;
    'dc-join': JoinEvent;
    'dc-reducer': ReducerEvent;
    'dc-hood': HoodEvent;
  }
}
