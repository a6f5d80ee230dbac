import type * as z from 'zod';
import type { CallOutput, Contract, HostMethod } from '../../shared/host';

/** One answer for every call of the contract, with input already checked. `gone` is aborted when the face that asked is not there any more. */
export type Answers = { readonly [M in HostMethod]: (input: z.output<Contract[M]['input']>, gone?: AbortSignal) => Promise<CallOutput<M>> | CallOutput<M> };
