// Sent by the parts of a form: the pipe, the hood, how something joins, as it is to be. They carry
// values of the document and don't know whose they are; the form does. Arrow keys in a list choose
// one entry after another: such a run of choices is to be undone as one.

import type { Hood } from '../../shop/schema/drop-schema.ts';
import type { Fitting } from '../../shop/schema/fitting-schema.ts';
import type { Pipe, SectionJoin, Transition } from '../../shop/schema/section-schema.ts';
import { DcEvent } from '../dc-event.ts';

abstract class ChosenEvent extends DcEvent {
  /** Whether it was chosen from a list, not typed. */
  readonly isChoice: boolean;

  constructor(type: string, how: 'choice' | undefined) {
    super(type);
    this.isChoice = how === 'choice';
  }
}

export class PipeEvent extends ChosenEvent {
  static readonly type = 'dc-pipe';
  readonly pipe: Pipe;

  constructor(pipe: Pipe, how?: 'choice') {
    super(PipeEvent.type, how);
    this.pipe = pipe;
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
export class FittingEvent extends ChosenEvent {
  static readonly type = 'dc-fitting';
  readonly fitting: Fitting | undefined;

  constructor(fitting: Fitting | undefined, how?: 'choice') {
    super(FittingEvent.type, how);
    this.fitting = fitting;
  }
}

export class JoinEvent extends ChosenEvent {
  static readonly type = 'dc-join';
  readonly join: SectionJoin;

  constructor(join: SectionJoin, how?: 'choice') {
    super(JoinEvent.type, how);
    this.join = join;
  }
}

/** A change of diameter, or undefined for the cone that is put in by itself. */
export class ReducerEvent extends ChosenEvent {
  static readonly type = 'dc-reducer';
  readonly transition: Transition | undefined;

  constructor(transition: Transition | undefined, how?: 'choice') {
    super(ReducerEvent.type, how);
    this.transition = transition;
  }
}

export class HoodEvent extends ChosenEvent {
  static readonly type = 'dc-hood';
  readonly hood: Hood;

  constructor(hood: Hood, how?: 'choice') {
    super(HoodEvent.type, how);
    this.hood = hood;
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
