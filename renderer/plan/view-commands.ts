import type { CommandId } from '../../shared/commands.ts';
import type { PlanView } from './plans/plans.ts';

/** What is shown over the chart, in the order in which it is offered, with the command that shows it. */
export const viewCommands: Readonly<Record<PlanView, CommandId>> = {
  strands: 'plan-strands',
  live: 'plan-live',
  'loose-ends': 'plan-loose-ends',
  'long-carries': 'plan-long-carries',
  'worst-rows': 'plan-worst-rows',
};
