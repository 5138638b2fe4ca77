/**
 * One thing to do while tying. The steps of a row follow one another as the maker's hands do: the row begins with
 * its lift marks; each run is reached by attaching a piece, or by carrying or turning a strand to it; it is tied,
 * with joins where a piece runs out; and the strand is then left hanging, ends, or stays in hand for the next run.
 *
 * Rows, cords, strands and pieces count from 1, as a person reads them. Lengths in mm. A step is known by its row
 * and its index; the same chart and plan give the same steps.
 */
import type { YarnId } from '../../design/codes.ts';

export type Side = 'left' | 'right';

/** One knot's place. */
export interface Place {
  readonly row: number;
  readonly cord: number;
}

interface InRow {
  readonly row: number;
  /** Its place in the row, from 0: the row's own step comes first. */
  readonly index: number;
  /** Knots of the whole hanging that are tied before it. */
  readonly knotsBefore: number;
}

interface OfPiece extends InRow {
  readonly yarn: YarnId;
  /** Its place among the plan's strands, from 1. */
  readonly strand: number;
  /** The piece's number among those of its yarn, in the order in which they are attached, from 1. */
  readonly piece: number;
}

/** A row begins. Also a row without a knot has this one step. */
export interface RowStep extends InRow {
  readonly kind: 'row';
  readonly goesRight: boolean;
  /** Cords to lift before the row is tied, in tying order. */
  readonly lifts: readonly number[];
  readonly knots: number;
}

/** The first piece of a strand, or one that begins where a strand ended: its tail points back along the row. */
export interface AttachStep extends OfPiece {
  readonly kind: 'attach';
  readonly cord: number;
  readonly tailSide: Side;
  readonly tailMm: number;
}

/** Knots of one yarn, from cord to cord in the row's direction. */
export interface KnotsStep extends OfPiece {
  readonly kind: 'knots';
  readonly count: number;
  readonly from: number;
  readonly to: number;
}

/** Knots of one yarn that a carried strand lies behind, as they come on its way. */
export interface Passed {
  readonly yarn: YarnId;
  readonly count: number;
  readonly from: number;
  readonly to: number;
}

/** The strand is laid behind the work, from its last knot to the one that comes next. */
export interface CarryStep extends OfPiece {
  readonly kind: 'carry';
  readonly from: Place;
  readonly to: Place;
  readonly cords: number;
  readonly rows: number;
  /** Slack included. */
  readonly lengthMm: number;
  /** What it lies behind in the row that it arrives in. */
  readonly behind: readonly Passed[];
  /** True where these knots are still to be tied, in front of it. */
  readonly ahead: boolean;
  /** True where nothing else is tied between, so that the yarn is still in the maker's hand. */
  readonly inHand: boolean;
}

/** The strand goes straight down to the next row. */
export interface TurnStep extends OfPiece {
  readonly kind: 'turn';
  readonly from: Place;
  readonly to: Place;
  /** Where the strand's way turns back: the end of the row above, of its run at least. */
  readonly side: Side;
  readonly lengthMm: number;
  readonly inHand: boolean;
}

/** The strand goes on with a fresh piece between two knots of a run. `piece` is the fresh one. */
export interface JoinStep extends OfPiece {
  readonly kind: 'join';
  readonly oldPiece: number;
  /** The old piece's last cord, and the fresh one's first. */
  readonly after: number;
  readonly cord: number;
  /** The old piece's tail points onward, the fresh one's back. */
  readonly oldTailSide: Side;
  readonly tailSide: Side;
  /** Of each of the two. */
  readonly tailMm: number;
}

/** The strand is laid down behind the work, to be taken up again. */
export interface LeaveStep extends OfPiece {
  readonly kind: 'leave';
  readonly cord: number;
  /** The knot that it goes on with. */
  readonly until: Place;
}

/** The strand ends: its tail points onward along the row. */
export interface EndStep extends OfPiece {
  readonly kind: 'end';
  readonly cord: number;
  readonly tailSide: Side;
  readonly tailMm: number;
}

export interface StepsByKind {
  row: RowStep;
  attach: AttachStep;
  knots: KnotsStep;
  carry: CarryStep;
  turn: TurnStep;
  join: JoinStep;
  leave: LeaveStep;
  end: EndStep;
}

export type StepKind = keyof StepsByKind;
export type Step = StepsByKind[StepKind];
