// What is said of signing in, setting up, accepting an invitation, in English.

export const signIn = {
  title: 'Sign in',
  lead: 'Plan the gag. Have it signed. Keep the record.',
  email: 'Mail address',
  password: 'Password',
  go: 'Sign in',
  demoTitle: 'Demo sign-ins',
  demoLead: 'This server holds an invented production. Tap a person to sign in as them.',
  ended: 'Your sign-in has ended. Sign in again; what you have not sent is kept.',
  needsSetup:
    'This server has no production yet. Open the one-time set-up link that it printed when it started.',
};

export const setUp = {
  title: 'Set up this server',
  lead: 'This link works once. You become the stunt coordinator of the first production.',
  name: 'Your name',
  production: 'Name of the production',
  timeZone: 'Time zone',
  passwordHelp: 'At least 12 characters.',
  go: 'Set up',
  noToken: 'The set-up link is not complete: the part after # is missing. Copy the whole link.',
};

export const invitation = {
  title: 'Accept the invitation',
  lead: 'Choose the name people see and a password.',
  go: 'Accept',
  noToken: 'The invitation link is not complete: the part after # is missing. Copy the whole link.',
};
