import type * as z from 'zod';
import { contract, hostMethods } from '../../shared/host';
import type { Answer, HostMethod } from '../../shared/host';
import { HostProblem, problemOf } from '../problem';
import type { Answers } from './answers';

/** Answers any call: known method, checked input, checked output. Never throws. `gone` is aborted when the face that asked is not there any more. */
export type Handle = (method: unknown, input: unknown, gone?: AbortSignal) => Promise<Answer<unknown>>;

/** True for the names of the contract and nothing else, also not for names every object has. */
export const isHostMethod = (method: unknown): method is HostMethod => hostMethods.some((known) => known === method);

/** The one door between a face and its host. */
export function makeHandle(answers: Answers): Handle {
  return async (method, input, gone) => {
    try {
      if (!isHostMethod(method)) throw HostProblem.of('host.unknown-method', { method: String(method).slice(0, 80) });
      const { input: takes, output: gives }: { input: z.ZodType; output: z.ZodType } = contract[method];
      const parsed = takes.safeParse(input);
      if (!parsed.success) throw HostProblem.of('host.bad-input', { where: whereIn(method, parsed.error) });
      const answer = answers[method] as (input: unknown, gone?: AbortSignal) => unknown;
      const given = gives.safeParse(await answer(parsed.data, gone));
      if (!given.success) throw HostProblem.of('host.bad-answer', { where: whereIn(method, given.error) });
      return { ok: true, value: given.data };
    } catch (error) {
      return { ok: false, problem: problemOf(error) };
    }
  };
}

/** The call and the field in it. What the check itself says is for programmers, in their words, and stays here. */
const whereIn = (method: HostMethod, error: z.ZodError): string => [method, error.issues[0]?.path.join('.') ?? ''].filter((part) => part !== '').join(', ');
