// Every screen but today, as one file of its own: opening the app reads and runs only what today needs.

export { default as EditPlan } from './EditPlan.svelte';
export { default as Gag } from './Gag.svelte';
export { default as Gags } from './Gags.svelte';
export { default as Help } from './Help.svelte';
export { default as HoldByCode } from './HoldByCode.svelte';
export { default as Holds } from './Holds.svelte';
export { default as Give } from './hand/Give.svelte';
export { default as Take } from './hand/Take.svelte';
export { default as ImportRoster } from './ImportRoster.svelte';
export { default as Invitation } from './Invitation.svelte';
export { default as NewGag } from './NewGag.svelte';
export { default as NotFound } from './NotFound.svelte';
export { default as Packets } from './Packets.svelte';
export { default as People } from './People.svelte';
export { default as AddCertificate } from './people/AddCertificate.svelte';
export { default as EditPerson } from './people/EditPerson.svelte';
export { default as Settings } from './Settings.svelte';
export { default as SetUp } from './SetUp.svelte';
export { default as Sign } from './Sign.svelte';
export { default as SignIn } from './SignIn.svelte';
export { default as Trail } from './Trail.svelte';
