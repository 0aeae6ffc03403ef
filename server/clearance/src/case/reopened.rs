//! What stopped a gag at a moment that has passed. A go called with no signal is judged when it arrives, and
//! what was released, closed or taken back in the meantime was still in the way when it was called.

use jiff::Timestamp;

use super::Case;

impl Case {
    /// This case with every stop that ended after the moment open again.
    #[must_use]
    pub fn reopened(&self, at: Timestamp) -> Case {
        let mut case = self.clone();
        for hold in &mut case.holds {
            hold.agreements.retain(|one| one.at <= at);
            hold.released_at = hold.released_at.filter(|released| *released <= at);
        }
        case.day.elsewhere.retain(|one| one.called_at <= at);
        for take in &mut case.day.elsewhere {
            take.ended_at = take.ended_at.filter(|ended| *ended <= at);
        }
        for down in &mut case.day.stand_downs {
            down.returned = down.returned.take().filter(|one| one.at <= at);
        }
        for incident in &mut case.day.incidents {
            incident.told.retain(|one| one.at <= at);
            incident.closings.retain(|one| one.at <= at);
            incident.closed_at = incident.closed_at.filter(|closed| *closed <= at);
        }
        case
    }
}
