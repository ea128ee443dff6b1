// Sent by the parts of a form: the pipe, the hood, how something joins, as it is to be. They carry
// values of the document and don't know whose they are; the form does.

import type { Hood } from '../../shop/schema/drop-schema.ts';
import type { Fitting } from '../../shop/schema/fitting-schema.ts';
import type { Pipe, SectionJoin, Transition } from '../../shop/schema/section-schema.ts';
import { DcEvent } from '../dc-event.ts';

export class PipeEvent extends DcEvent {
  static readonly type = 'dc-pipe';
  readonly pipe: Pipe;

  constructor(pipe: Pipe) {
    super(PipeEvent.type);
    this.pipe = pipe;
  }
}

export class FittingsEvent extends DcEvent {
  static readonly type = 'dc-fittings';
  readonly fittings: readonly Fitting[];

  constructor(fittings: readonly Fitting[]) {
    super(FittingsEvent.type);
    this.fittings = fittings;
  }
}

/** One fitting as it is to be, or undefined where it is to go. */
export class FittingEvent extends DcEvent {
  static readonly type = 'dc-fitting';
  readonly fitting: Fitting | undefined;

  constructor(fitting: Fitting | undefined) {
    super(FittingEvent.type);
    this.fitting = fitting;
  }
}

export class JoinEvent extends DcEvent {
  static readonly type = 'dc-join';
  readonly join: SectionJoin;

  constructor(join: SectionJoin) {
    super(JoinEvent.type);
    this.join = join;
  }
}

/** A change of diameter, or undefined for the cone that is put in by itself. */
export class ReducerEvent extends DcEvent {
  static readonly type = 'dc-reducer';
  readonly transition: Transition | undefined;

  constructor(transition: Transition | undefined) {
    super(ReducerEvent.type);
    this.transition = transition;
  }
}

export class HoodEvent extends DcEvent {
  static readonly type = 'dc-hood';
  readonly hood: Hood;

  constructor(hood: Hood) {
    super(HoodEvent.type);
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
