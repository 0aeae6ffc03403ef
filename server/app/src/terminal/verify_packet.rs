//! `verify` of a packet: the PDF itself, the files it carries and the page that people read must say one thing.
//! It opens no database and no socket.

use gagwright_clearance::{
    Device, Plan, SignOff,
    canonical::{facet_hashes, plan_digest},
    opening, signoff,
};
use gagwright_packet::{attachments, printed, whole};
use serde::{Deserialize, de::DeserializeOwned};

use super::{
    fault::Fault,
    verify::{Findings, Keys, leaf},
};
use crate::trail_file::LeafProof;

/// `signoffs.json`.
#[derive(Deserialize)]
struct SignOffs {
    signoffs: Vec<SignOff>,
    devices: Vec<Device>,
}

fn wrong(problem: impl std::fmt::Display) -> Fault {
    Fault::failed(format!("this packet does NOT verify: {problem}"))
}

pub(crate) fn check(pdf: &[u8], keys: Keys<'_>) -> Result<Findings, Fault> {
    let files = attachments(pdf).map_err(wrong)?;
    let file = |name: &str| {
        let mut named = files.iter().filter(|file| file.name == name);
        named
            .next()
            .map(|file| file.text.as_str())
            .ok_or_else(|| wrong(format!("it does not carry the file {name}")))
    };
    let proof: LeafProof = read("proof.json", file("proof.json")?)?;
    let plan: Plan = read("plan.json", file("plan.json")?)?;
    let kept: SignOffs = read("signoffs.json", file("signoffs.json")?)?;
    let mut findings = leaf(&proof, keys)?;
    same_plan(&proof, &plan)?;
    let signed = signatures(&plan, &kept)?;
    same_page(pdf, &proof)?;
    if !whole(pdf) {
        return Err(wrong(
            "the file was changed after it was printed: its identifier is not the hash of the rest of it",
        ));
    }
    findings.file = "packet";
    findings.facts.extend([
        format!(
            "plan.json is revision {} of that gag, and has that digest",
            plan.revision
        ),
        format!("{signed} sign-offs verify with the keys of their devices, carried beside them"),
        "the page prints the digest, the root and the leaf that the files have".to_owned(),
    ]);
    findings.proves.extend([
        "The plan in this packet is, to the last letter, the revision that the leaf records.".to_owned(),
        "Each sign-off was made by whoever held the key beside it, over exactly the facets it names.".to_owned(),
        "The digest, root and leaf printed on its pages are those of the files it carries.".to_owned(),
    ]);
    findings.does_not_prove.extend([
        "That the sign-offs still stand: one that lapsed since, a later decline or a revoked device is not in this \
         file."
            .to_owned(),
        "Whose the devices' keys are: they came with the file. The exported trail says which leaf registered each."
            .to_owned(),
        "Every other word on its pages: the rest of the text is a printing of these files, and is not itself signed."
            .to_owned(),
    ]);
    Ok(findings)
}

fn read<T: DeserializeOwned>(name: &str, text: &str) -> Result<T, Fault> {
    serde_json::from_str(text).map_err(|error| wrong(format!("{name} cannot be read: {error}")))
}

/// The plan is the very one that the leaf records.
fn same_plan(proof: &LeafProof, plan: &Plan) -> Result<(), Fault> {
    let fact = |name: &str| proof.entry.facts.get(name).cloned().unwrap_or_default();
    let digest = plan_digest(&plan.facets).map_err(wrong)?;
    let hashes = facet_hashes(&plan.facets).map_err(wrong)?;
    let hashes = serde_json::to_value(hashes).map_err(wrong)?;
    let gag = plan.gag.to_string();
    for (what, same) in [
        ("gag", proof.entry.gag.as_deref() == Some(gag.as_str())),
        ("revision", fact("revision") == plan.revision),
        ("technique", fact("technique") == plan.technique.as_str()),
        ("policy", fact("policy") == plan.policy.as_str()),
        ("plan_digest", fact("plan_digest") == digest.as_str()),
        ("facets", fact("facets") == hashes),
    ] {
        if !same {
            return Err(wrong(format!(
                "{what} of plan.json is not what the leaf records"
            )));
        }
    }
    Ok(())
}

/// Each sign-off verifies, is about this gag, and covers this content where it is of this revision.
fn signatures(plan: &Plan, kept: &SignOffs) -> Result<usize, Fault> {
    let hashes = facet_hashes(&plan.facets).map_err(wrong)?;
    for one in &kept.signoffs {
        let claimed = signoff::read_unverified(&one.jws).map_err(wrong)?;
        let of = |problem: &str| wrong(format!("sign-off {}: {problem}", claimed.id));
        let device = kept
            .devices
            .iter()
            .find(|device| device.id == claimed.device);
        let device = device.ok_or_else(|| of("the key of its device is not in signoffs.json"))?;
        let statement =
            signoff::verify(&one.jws, &device.key).map_err(|error| of(&error.to_string()))?;
        if device.person != statement.signer {
            return Err(of("its device is another person's"));
        }
        if statement.gag != plan.gag {
            return Err(of("it is about another gag"));
        }
        let current = statement.revision == plan.revision;
        if current
            && statement
                .facets
                .iter()
                .any(|(facet, hash)| hashes.get(facet) != Some(hash))
        {
            return Err(of("facets it signed are not those of plan.json"));
        }
        let signed: Vec<&String> = statement
            .conditions
            .iter()
            .chain(&statement.reason)
            .collect();
        let known =
            |one: &opening::Opening| one.commitment().is_some_and(|made| signed.contains(&&made));
        if !one.openings.iter().all(known) {
            return Err(of("a text beside it is not the one that was signed"));
        }
    }
    Ok(kept.signoffs.len())
}

/// What people read on the page is what the files have.
fn same_page(pdf: &[u8], proof: &LeafProof) -> Result<(), Fault> {
    let page = printed(pdf).map_err(wrong)?;
    let digest = proof
        .entry
        .facts
        .get("plan_digest")
        .and_then(|one| one.as_str());
    for (what, wanted) in [
        ("plan digest", digest.unwrap_or_default()),
        ("leaf hash", proof.leaf_hash.as_str()),
        ("root", proof.root.as_str()),
    ] {
        if wanted.is_empty() || !page.contains(wanted) {
            return Err(wrong(format!(
                "the pages do not print the {what} {wanted} of proof.json"
            )));
        }
    }
    Ok(())
}
