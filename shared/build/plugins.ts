/** The plugins that every build of the project needs: app, worker, command line, tests, chores. */
import type { Plugin } from 'vite';
import { engineModule } from './engineModule.ts';
import { partModules } from './partModules.ts';
import { wordModules } from './wordModules.ts';
import { yamlModules } from './yamlModules.ts';

export const dataModules = (): Plugin[] => [yamlModules(), wordModules(), engineModule(), partModules()];
