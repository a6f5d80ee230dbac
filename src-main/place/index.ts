export * from './project-folder';
export * from './data-folder';
