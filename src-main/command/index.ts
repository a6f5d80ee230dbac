export { runCommand } from './run';
