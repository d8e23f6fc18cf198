/** The closed list of things that can happen, by which a condition may ask "does it happen now". */
export const eventIds: readonly string[] = [
  ...['begun', 'finished', 'hinted', 'went-back'],
  ...['worn', 'removed', 'read', 'looked', 'traced', 'judged'],
  ...['door-opened', 'door-shut', 'engine-started', 'engine-stopped', 'engine-speed', 'ac-on', 'ac-off'],
  ...['blower-set', 'windows-opened', 'windows-shut', 'air-recirculated', 'air-fresh'],
  ...['cap-on', 'cap-off', 'coupled', 'coupled-port', 'coupler-opened', 'opened-port', 'coupler-shut', 'uncoupled'],
  ...['sprayed', 'rerouted', 'manifold-opened', 'manifold-shut', 'purge-opened', 'purge-shut'],
  ...['gauge-zeroed', 'probe-placed', 'noted'],
  ...['can-tapped', 'can-untapped', 'can-untapped-open', 'can-opened', 'can-shut', 'can-open-to'],
  ...['can-inverted', 'can-tilted', 'can-shaken', 'can-placed'],
  ...['decided', 'diagnosed', 'replaced', 'labelled'],
  ...['hose-in-zone', 'hose-caught', 'clutch-in', 'clutch-out', 'high-pressure-trip', 'relief-opened', 'liquid-slug'],
];
