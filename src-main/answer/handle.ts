import type * as z from 'zod';
import { contract, hostMethods } from '../../shared/host';
import type { Answer, HostMethod } from '../../shared/host';
import { HostProblem, problemOf } from '../problem';
import type { Answers } from './answers';

/** Answers any call: known method, checked input, checked output. Never throws. */
export type Handle = (method: unknown, input: unknown) => Promise<Answer<unknown>>;

/** True for the names of the contract and nothing else, also not for names every object has. */
export const isHostMethod = (method: unknown): method is HostMethod => hostMethods.some((known) => known === method);

/** The one door between a face and its host. */
export function makeHandle(answers: Answers): Handle {
  return async (method, input) => {
    try {
      if (!isHostMethod(method)) throw HostProblem.of('host.unknown-method', { method: String(method).slice(0, 80) });
      const { input: takes, output: gives }: { input: z.ZodType; output: z.ZodType } = contract[method];
      const parsed = takes.safeParse(input);
      if (!parsed.success) throw badInput(parsed.error);
      const answer = answers[method] as (input: unknown) => unknown;
      return { ok: true, value: gives.parse(await answer(parsed.data)) };
    } catch (error) {
      return { ok: false, problem: problemOf(error) };
    }
  };
}

function badInput(error: z.ZodError): HostProblem {
  const first = error.issues[0];
  return HostProblem.of('host.bad-input', { where: first?.path.join('.') || 'the top', what: first?.message ?? 'unknown' });
}
