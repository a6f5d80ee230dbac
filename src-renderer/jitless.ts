import * as z from 'zod';

// The strict content policy forbids building functions from text; zod must not even try. Imported before any schema.
z.config({ jitless: true });
