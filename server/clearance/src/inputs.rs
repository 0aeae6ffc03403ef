//! The technique's inputs, gathered from the facets they are kept in. A parameter lives in exactly the
//! facet its technique names: kept elsewhere, a change to it would slip past those who answer for it.

use std::collections::BTreeMap;

use gagwright_mechanics::{Facet, Inputs, Technique};

use crate::{
    facets::Parameters,
    plan::{Facets, Plan},
};

/// One parameter in two facets of a plan.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[error("{name} is in both the {} and the {} of the plan; keep it in one", .first.name(), .second.name())]
pub struct RepeatedParameter {
    /// The parameter.
    pub name: String,
    /// Where it is first, in table order.
    pub first: Facet,
    /// Where it is again.
    pub second: Facet,
}

/// A parameter in a facet it does not belong to.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Misplaced {
    /// The parameter.
    pub name: String,
    /// Where it is.
    pub found: Facet,
    /// Where it belongs; none: the technique has no such parameter.
    pub belongs: Option<Facet>,
}

impl Facets {
    /// Every facet's parameters, in table order; rehearsals have none.
    pub fn parameters(&self) -> [(Facet, &Parameters); 9] {
        [
            (Facet::Setting, &self.setting.parameters),
            (Facet::Action, &self.action.parameters),
            (Facet::Rigging, &self.rigging.parameters),
            (Facet::Effects, &self.effects.parameters),
            (Facet::Vehicles, &self.vehicles.parameters),
            (Facet::Cast, &self.cast.parameters),
            (Facet::Medical, &self.medical.parameters),
            (Facet::Camera, &self.camera.parameters),
            (Facet::Conditions, &self.conditions.parameters),
        ]
    }

    /// The parameters of one facet, to change them; rehearsals have none.
    pub fn parameters_mut(&mut self, facet: Facet) -> Option<&mut Parameters> {
        match facet {
            Facet::Setting => Some(&mut self.setting.parameters),
            Facet::Action => Some(&mut self.action.parameters),
            Facet::Rigging => Some(&mut self.rigging.parameters),
            Facet::Effects => Some(&mut self.effects.parameters),
            Facet::Vehicles => Some(&mut self.vehicles.parameters),
            Facet::Cast => Some(&mut self.cast.parameters),
            Facet::Medical => Some(&mut self.medical.parameters),
            Facet::Camera => Some(&mut self.camera.parameters),
            Facet::Conditions => Some(&mut self.conditions.parameters),
            Facet::Rehearsals => None,
        }
    }

    /// The technique's inputs, merged from all facets.
    ///
    /// # Errors
    /// When two facets hold the same parameter.
    pub fn inputs(&self) -> Result<Inputs, RepeatedParameter> {
        let mut places: BTreeMap<&str, Facet> = BTreeMap::new();
        let mut inputs = BTreeMap::new();
        for (facet, parameters) in self.parameters() {
            for (name, value) in parameters {
                if let Some(first) = places.insert(name, facet) {
                    return Err(RepeatedParameter {
                        name: name.clone(),
                        first,
                        second: facet,
                    });
                }
                inputs.insert(name.clone(), value.clone());
            }
        }
        Ok(Inputs(inputs))
    }

    /// Every parameter that is not where its technique says it belongs, in table order.
    pub fn misplaced(&self, technique: &dyn Technique) -> Vec<Misplaced> {
        let belongs: BTreeMap<&str, Facet> = technique
            .parameters()
            .iter()
            .map(|one| (one.name, one.facet))
            .collect();
        let mut found = Vec::new();
        for (facet, parameters) in self.parameters() {
            for name in parameters.keys() {
                let right = belongs.get(name.as_str()).copied();
                if right != Some(facet) {
                    found.push(Misplaced {
                        name: name.clone(),
                        found: facet,
                        belongs: right,
                    });
                }
            }
        }
        found
    }
}

impl Plan {
    /// The technique's inputs, merged from all facets.
    ///
    /// # Errors
    /// When two facets hold the same parameter.
    pub fn inputs(&self) -> Result<Inputs, RepeatedParameter> {
        self.facets.inputs()
    }
}
