import type { Contradiction, ScheduleProblem, Windows } from './types';

/** A rule as an edge of the graph of lags; node `n` stands for the start of the clock. */
interface Edge {
  readonly from: number;
  readonly to: number;
  readonly least: number;
}

/** Edges of all rules: lags, and with `start` node n also earliest starts and latest ends. */
function edgesOf({ durations, lags, earliest, latest }: ScheduleProblem): Edge[] {
  const start = durations.length;
  const edges: Edge[] = [...lags];
  durations.forEach((minutes, i) => {
    edges.push({ from: start, to: i, least: earliest?.[i] ?? 0 });
    const end = latest?.[i];
    if (end !== undefined && Number.isFinite(end)) edges.push({ from: i, to: start, least: minutes - end });
  });
  return edges;
}

/** Longest paths from node `source`; the circle that grows for ever when there is one. */
function longest(nodes: number, source: number, edges: readonly Edge[]): { readonly length: Float64Array } | { readonly circle: readonly Edge[] } {
  const length = new Float64Array(nodes).fill(Number.NEGATIVE_INFINITY);
  const by: (Edge | undefined)[] = Array.from({ length: nodes });
  length[source] = 0;
  let last = -1;
  for (let round = 0; round <= nodes; round += 1) {
    last = -1;
    for (const edge of edges) {
      const reached = (length[edge.from] ?? 0) + edge.least;
      if (reached <= (length[edge.to] ?? 0)) continue;
      length[edge.to] = reached;
      by[edge.to] = edge;
      last = edge.to;
    }
    if (last < 0) return { length };
  }
  return { circle: circleThrough(by, nodes, last) };
}

/** Goes back from a node that still grew after every round until it is surely on the circle, then once round. */
function circleThrough(by: readonly (Edge | undefined)[], nodes: number, last: number): Edge[] {
  let node = last;
  for (let k = 0; k < nodes; k += 1) node = by[node]?.from ?? node;
  const circle: Edge[] = [];
  const first = node;
  do {
    const edge = by[node];
    if (edge === undefined) break;
    circle.unshift(edge);
    node = edge.from;
  } while (node !== first);
  return circle;
}

/**
 * What rules of order and windows alone leave each activity: longest paths from and to the start of the clock (Bellman and Ford), or the
 * circle of rules that contradict each other. `horizon`: latest end of what has no other limit, in minutes.
 */
export function windowsOf(problem: ScheduleProblem, horizon: number): Windows | Contradiction {
  const n = problem.durations.length;
  const edges = edgesOf(problem);
  const ahead = longest(n + 1, n, edges);
  if ('circle' in ahead) {
    return {
      kind: 'contradiction', shortBy: ahead.circle.reduce((sum, e) => sum + e.least, 0),
      activities: ahead.circle.map((e) => e.from).filter((i) => i < n),
    };
  }
  const back = longest(n + 1, n, edges.map(({ from, to, least }) => ({ from: to, to: from, least })).concat(
    problem.durations.map((minutes, i) => ({ from: n, to: i, least: minutes - horizon }))));
  const earliestStart = Int32Array.from(ahead.length.subarray(0, n));
  // A horizon that is too short for the rules leaves windows the wrong way round; that is for the caller to see.
  const latestStart = 'circle' in back ? earliestStart.slice() : Int32Array.from(back.length.subarray(0, n), (x) => -x);
  return { kind: 'windows', earliestStart, latestStart };
}
