import { useEffect, useState, type RefObject } from 'react';

/** Width of an element in pixels, followed as it changes. */
export function useWidth(element: RefObject<HTMLElement | null>, first: number): number {
  const [width, setWidth] = useState(first);
  useEffect(() => {
    if (element.current === null) return undefined;
    const watch = new ResizeObserver(([entry]) => { if (entry !== undefined) setWidth(Math.floor(entry.contentRect.width)); });
    watch.observe(element.current);
    return () => watch.disconnect();
  }, [element]);
  return width;
}
