import { expect, press, test } from './demo.ts';
import { approve, newGag, signIn } from './steps.ts';

test('a changed parameter shows what it would lapse before it is saved, and lapses exactly that', async ({
  page,
  browser,
}) => {
  await signIn(page, /coordinator/i);
  const gag = await newGag(page);
  await approve(page, gag);

  await page.goto(`/gags/${gag.id}/edit`);
  await expect(page.getByText('Nothing is changed yet.')).toBeVisible();
  const height = page.getByLabel('Drop height');
  await height.fill('40 parsecs');
  await expect(page.getByText('1 field needs attention first.')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Save as a new revision' })).toBeDisabled();
  await height.fill('40 ft');
  const panel = page.getByRole('region', { name: 'What this would lapse' });
  await expect(panel).toContainText('Lapsed');
  await page.getByLabel("Performer's mass").fill('154 lb');
  await page.getByLabel('Catcher', { exact: true }).selectOption({ label: 'Air bag' });
  await page.getByLabel('Catcher depth').fill('2.4 m');
  await expect(page.getByRole('region', { name: 'Figures as you type' })).toContainText('m/s');

  await press(page.getByText('Imperial'));
  await expect(page.getByRole('region', { name: 'Figures as you type' })).toContainText(/ft\/s|mph/);
  await press(page.getByText('Metric'));
  await height.blur();
  await expect(height).toHaveValue('12.2 m');

  await page.getByLabel('Why it changes').fill('The ledge is twelve metres up.');
  await press(page.getByRole('button', { name: 'Save as a new revision' }));
  await page.waitForURL(new RegExp(`/gags/${gag.id}$`));
  await expect(page.getByText('Lapsed').first()).toBeVisible();

  await page.goto(`/gags/${gag.id}/sign?role=coordinator`);
  await expect(page.getByText('Changed since you signed revision 1')).toBeVisible();
  await expect(page.getByText('Drop height').first()).toBeVisible();

  // Two signatures on revision 2; the rig is in what one of them covers and not in the other.
  await approve(page, gag);
  const other = await browser.newContext();
  const second = await other.newPage();
  await signIn(second, /first assistant director/i);
  await approve(second, gag, 'first_ad');
  await other.close();
  await page.goto(`/gags/${gag.id}/edit`);
  await page.getByLabel('Catcher depth').fill('2.6 m');
  await expect(panel).toContainText('Stunt coordinator');
  await expect(panel).not.toContainText('First assistant director');
  await page.getByLabel('Why it changes').fill('A deeper bag came.');
  await press(page.getByRole('button', { name: 'Save as a new revision' }));
  await page.waitForURL(new RegExp(`/gags/${gag.id}$`));
  await page.goto(`/gags/${gag.id}/sign-offs`);
  const role = (title: string) =>
    page.getByRole('listitem').filter({ has: page.getByRole('heading', { name: title, exact: true }) });
  await expect(role('Stunt coordinator')).toContainText('Lapsed');
  await expect(role('First assistant director')).toContainText('Stands');
});

test('two people on one revision: the second sees both sides and chooses', async ({ page, browser }) => {
  await signIn(page, /coordinator/i);
  const gag = await newGag(page);
  await expect(page.getByLabel('Drop height')).toBeVisible();

  const other = await browser.newContext();
  const second = await other.newPage();
  await signIn(second, /coordinator/i);
  await second.goto(`/gags/${gag.id}/edit`);
  await second.getByLabel('Drop height').fill('14 m');
  await second.getByLabel('Why it changes').fill('Measured on the scout.');
  await press(second.getByRole('button', { name: 'Save as a new revision' }));
  await second.waitForURL(new RegExp(`/gags/${gag.id}$`));
  await other.close();

  await page.getByLabel('Drop height').fill('16 m');
  await page.getByLabel('Why it changes').fill('The director asks for more.');
  await press(page.getByRole('button', { name: 'Save as a new revision' }));
  await expect(page.getByRole('heading', { name: 'Someone saved another revision first' })).toBeVisible();
  await expect(page.getByText('14 m', { exact: false }).first()).toBeVisible();
  await expect(page.getByText('16 m', { exact: false }).first()).toBeVisible();
  await expect(page.getByRole('button', { name: 'Go on editing with these' })).toBeDisabled();
  await page.getByRole('radio', { name: 'Take theirs' }).check();
  await press(page.getByRole('button', { name: 'Go on editing with these' }));
  await expect(page.getByText('Based on revision 2.')).toBeVisible();
  await expect(page.getByLabel('Drop height')).toHaveValue(/14/);
});
