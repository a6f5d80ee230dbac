import type * as z from 'zod';
import type { CallOutput, Contract, HostMethod } from '../../shared/host';

/** One answer for every call of the contract, with input already checked. */
export type Answers = { readonly [M in HostMethod]: (input: z.output<Contract[M]['input']>) => Promise<CallOutput<M>> | CallOutput<M> };
