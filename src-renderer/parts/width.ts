import { useEffect, useState, type RefObject } from 'react';

/** Width of an element in pixels, followed as it changes. */
export const useWidth = (element: RefObject<HTMLElement | null>, first: number): number => useMeasure(element, first, 'width');
/** Height of an element in pixels, followed as it changes. */
export const useHeight = (element: RefObject<HTMLElement | null>, first: number): number => useMeasure(element, first, 'height');

function useMeasure(element: RefObject<HTMLElement | null>, first: number, side: 'width' | 'height'): number {
  const [length, setLength] = useState(first);
  useEffect(() => {
    if (element.current === null) return undefined;
    const watch = new ResizeObserver(([entry]) => { if (entry !== undefined) setLength(Math.floor(entry.contentRect[side])); });
    watch.observe(element.current);
    return () => watch.disconnect();
  }, [element, side]);
  return length;
}
