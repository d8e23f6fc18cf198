/** A sample for the identifier: its own hose on a port, gas through its cell into the room until the time is over. */
import { IDENTIFIER } from '../../equipment/identifier';
import type { Command } from '../commandSpecs';
import { joinToRoom, joinVessels } from '../links';
import { notFree } from '../notFree';
import { done, type Rig, type RigPort, refuse } from '../rig';
import { STEP_S } from '../stepTime';

export const SAMPLE_LINKS = { inlet: 'sample:inlet', outlet: 'sample:outlet' } as const;

export const identify = {
  identify(rig: Rig, command: Command) {
    const port = rig.ports.get(String(command.port)) as RigPort;
    const { service } = rig.desk;
    if (!rig.tools.includes('identifier')) return refuse('noIdentifier');
    if (service.sample.port !== null) return refuse('sampling');
    const hindrance = notFree(rig, port.id);
    if (hindrance) return hindrance;
    const endsAt = rig.step() + Math.round(IDENTIFIER.sampleS / STEP_S);
    service.sample = { port: port.id, endsAt, shares: null };
    const cell = { vessel: rig.toolVessels.identifier, cell: 0, height: 'bulk' } as const;
    joinVessels(rig.network, SAMPLE_LINKS.inlet, port.at, cell, IDENTIFIER.inletCdaM2);
    joinToRoom(rig.network, SAMPLE_LINKS.outlet, cell.vessel, IDENTIFIER.outletCdaM2);
    return done({ id: 'sample-started', subject: port.id });
  },
};
