/** The plugins that every build of the project needs: app, worker, command line, tests, chores. */
import type { Plugin } from 'vite';
import { engineModule } from './engineModule.ts';
import { yamlModules } from './yamlModules.ts';

export const dataModules = (): Plugin[] => [yamlModules(), engineModule()];
