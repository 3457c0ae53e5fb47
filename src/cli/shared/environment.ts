/** Names under which Astro lets the environment answer what pages ask of `import.meta.env`. */
const overriding = ['PROD', 'DEV', 'MODE', 'SSR', 'BASE_URL', 'SITE', 'ASSETS_PREFIX'];

/**
 * Settles what Astro reads from the environment, so that no variable left there from something else changes a site
 * (its pages would lose their security policy, or stay as they were when the content changes), and so that nobody on
 * the network is asked anything. To be called before Astro is loaded.
 */
export function settleEnvironment(
  mode: 'development' | 'production',
  env: NodeJS.ProcessEnv = process.env,
): void {
  for (const name of overriding) delete env[name];
  env.NODE_ENV = mode;
  env.ASTRO_TELEMETRY_DISABLED = '1';
  env.ASTRO_DISABLE_UPDATE_CHECK = 'true';
  // The development server stays in the terminal that started it.
  env.ASTRO_DEV_BACKGROUND = '0';
}
