//! What must hold of every answer by itself, whoever is right: stated without the rules.

use gagwright_clearance::{
    Case, Clearance, ClearanceState, Facet, JudgeMemory, RoleState, clearance_remembering,
};
use jiff::Timestamp;

use crate::{
    chance::Chance,
    contents::Content,
    story::{Happening, Scope, What},
    test_fall,
};

/// Cleared means that nothing is missing; the answers in a word follow from their lists.
pub fn hold(story: &[Happening], contents: &[Content], now: i64, judged: &Clearance) {
    whoever_was_signed_for_is_named(story, judged);
    let cleared = judged.state == ClearanceState::Cleared;
    assert_eq!(cleared, judged.blocks.is_empty());
    assert_eq!(judged.day.stands, judged.day.blocks.is_empty());
    assert_eq!(judged.go.may, judged.go.why_not.is_empty());
    if !cleared {
        assert!(!judged.go.may, "a go for a plan that is not cleared");
        return;
    }
    let standing = |state: RoleState| state == RoleState::Standing;
    assert!(judged.roles.iter().all(|one| standing(one.state)));
    assert!(judged.roles.len() >= 6, "somebody was not asked");
    let revised = story.iter().rev().find_map(|one| match one.what {
        What::Revise(content) => Some(content),
        _ => None,
    });
    let content = &contents[revised.unwrap_or(0)];
    assert!(content.height.is_some_and(|height| height <= 12.0));
    assert!(content.slots.iter().all(|(_, person)| person.is_some()));
    assert!(content.day.is_some());
    for (place, one) in story.iter().enumerate() {
        match one.what {
            What::Hold { gag, .. } if gag != Scope::Another => {
                let spoken = |what: &What| matches!(what, What::Agree { hold, said: true, .. } if *hold == place);
                assert!(story.iter().any(|one| spoken(&one.what)), "an open hold");
            }
            What::Incident { gag, .. } if gag != Scope::Another => {
                let closed = |what: &What| matches!(what, What::Close { incident, .. } if *incident == place);
                assert!(
                    story.iter().filter(|one| closed(&one.what)).count() >= 2,
                    "an open incident"
                );
            }
            _ => {}
        }
    }
    // Each mark that decides was made by somebody for the very facets that the role answers for.
    for standing in &judged.roles {
        let signed = story.iter().any(|one| {
            let What::Sign(mark) = &one.what else {
                return false;
            };
            mark.role == standing.role
                && Some(mark.revision) == standing.revision
                && !mark.no
                && !mark.forged
                && mark.good_until.is_none_or(|until| until > now)
                && standing.signer == Some(crate::people::person(mark.by))
        });
        assert!(signed, "{} stands and never signed", standing.role.name());
    }
    for (name, wanted) in &content.rungs {
        let good = story
            .iter()
            .filter(|one| matches!(one.what, What::Run { rung, good: true, .. } if rung == *name));
        assert!(good.count() >= *wanted as usize, "a missing rung");
    }
}

/// A mark of the day that stands says in whose stead it was signed, exactly when it was.
fn whoever_was_signed_for_is_named(story: &[Happening], judged: &Clearance) {
    for standing in &judged.day.marks {
        if standing.state != RoleState::Standing {
            continue;
        }
        let mut marks = story.iter().filter_map(|one| match &one.what {
            What::SignDay(mark) => Some(mark),
            _ => None,
        });
        let signed = marks.find(|mark| standing.signoff == Some(crate::ink::mark_id(mark)));
        let lent = signed.and_then(|mark| mark.deputy);
        let from = lent.and_then(|place| match story[place].what {
            What::Depute { from, .. } => Some(crate::people::person(from)),
            _ => None,
        });
        assert!(signed.is_some(), "{} never signed", standing.role.name());
        assert_eq!(standing.signed_for, from, "{}", standing.role.name());
    }
}

/// The order in which additions arrive changes nothing: leaves and times say what came first.
pub fn order_changes_nothing(
    case: &Case,
    now: Timestamp,
    judged: &Clearance,
    chance: &mut Chance,
    memory: &JudgeMemory,
) {
    fn shuffle<T>(list: &mut [T], chance: &mut Chance) {
        for at in (1..list.len()).rev() {
            list.swap(at, chance.below(at + 1));
        }
    }
    let mut shuffled = case.clone();
    shuffle(&mut shuffled.signoffs, chance);
    shuffle(&mut shuffled.day.signoffs, chance);
    shuffle(&mut shuffled.holds, chance);
    shuffle(&mut shuffled.readings, chance);
    shuffle(&mut shuffled.runs, chance);
    shuffle(&mut shuffled.people, chance);
    shuffle(&mut shuffled.members, chance);
    shuffle(&mut shuffled.devices, chance);
    shuffle(&mut shuffled.delegations, chance);
    shuffle(&mut shuffled.resolutions, chance);
    shuffle(&mut shuffled.day.briefings, chance);
    shuffle(&mut shuffled.day.takes, chance);
    shuffle(&mut shuffled.day.elsewhere, chance);
    shuffle(&mut shuffled.day.looks, chance);
    shuffle(&mut shuffled.day.stand_downs, chance);
    shuffle(&mut shuffled.day.incidents, chance);
    shuffle(&mut shuffled.day.equipment, chance);
    for hold in &mut shuffled.holds {
        shuffle(&mut hold.agreements, chance);
    }
    let again = clearance_remembering(&shuffled, now, test_fall::find, memory);
    // As text: a reading that is no number is not equal to itself.
    assert_eq!(format!("{again:?}"), format!("{judged:?}"));
}

/// One more small change in a facet lapses exactly the marks that stood and cover it.
pub fn a_change_lapses_whoever_covers_it(
    case: &Case,
    now: Timestamp,
    judged: &Clearance,
    chance: &mut Chance,
    memory: &JudgeMemory,
) {
    let mut changed = case.clone();
    changed.plan.revision += 1;
    let facets = &mut changed.plan.facets;
    let facet = chance.of(&[
        Facet::Action,
        Facet::Effects,
        Facet::Medical,
        Facet::Camera,
        Facet::Rigging,
    ]);
    let other = "Something that nobody here has ever signed".to_owned();
    match facet {
        Facet::Action => facets.action.abort = other,
        Facet::Effects => facets.effects.suppression = other,
        Facet::Medical => facets.medical.hospital = other,
        Facet::Camera => facets.camera.notes = other,
        _ => facets.rigging.method = other,
    }
    let after = clearance_remembering(&changed, now, test_fall::find, memory);
    for before in &judged.roles {
        let found = after
            .roles
            .iter()
            .find(|one| (one.role, one.slot) == (before.role, before.slot));
        let state = found.map(|one| one.state);
        let covers = case
            .policy
            .role(before.role)
            .is_some_and(|one| one.covers.contains(&facet));
        let expected = match before.state {
            RoleState::Standing | RoleState::Conditional if covers => RoleState::Lapsed,
            same => same,
        };
        assert_eq!(
            state,
            Some(expected),
            "{} on {}",
            before.role.name(),
            facet.name()
        );
    }
}
