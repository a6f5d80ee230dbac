export { contentPolicy, safeHeaders } from './content-policy';
export { pageFile, pathInside } from './page-file';
export type { PageFile } from './page-file';
