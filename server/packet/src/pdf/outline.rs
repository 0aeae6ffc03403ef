//! Bookmarks in two depths. printpdf writes them flat and sorts those of one page by name.

use lopdf::{Document, Object, ObjectId, dictionary, text_string};

use crate::page::{Entry, Flow};

/// A section with the parts under it.
struct Section<'a> {
    own: (ObjectId, &'a Entry),
    parts: Vec<(ObjectId, &'a Entry)>,
}

/// Adds the bookmarks and gives their root; none when there are none.
pub(super) fn add(file: &mut Document, flow: &Flow) -> Option<ObjectId> {
    let mut sections: Vec<Section<'_>> = Vec::new();
    for entry in &flow.outline {
        let id = file.new_object_id();
        match sections.last_mut() {
            Some(section) if entry.depth > 0 => section.parts.push((id, entry)),
            _ => sections.push(Section {
                own: (id, entry),
                parts: Vec::new(),
            }),
        }
    }
    let tops: Vec<_> = sections.iter().map(|section| section.own).collect();
    let (&(first, _), &(last, _)) = (tops.first()?, tops.last()?);
    let root = file.add_object(dictionary! {
        "Type" => "Outlines",
        "First" => first,
        "Last" => last,
        "Count" => tops.len() as i64,
    });
    add_row(file, flow, root, &tops);
    for section in &sections {
        add_row(file, flow, section.own.0, &section.parts);
        let (Some(&(first, _)), Some(&(last, _))) = (section.parts.first(), section.parts.last())
        else {
            continue;
        };
        if let Ok(item) = file.get_dictionary_mut(section.own.0) {
            item.set("First", first);
            item.set("Last", last);
            // Negative: the parts are folded away until the reader opens them.
            item.set("Count", -(section.parts.len() as i64));
        }
    }
    Some(root)
}

/// Adds the bookmarks of one depth under one parent.
fn add_row(file: &mut Document, flow: &Flow, parent: ObjectId, row: &[(ObjectId, &Entry)]) {
    let pages: Vec<ObjectId> = file.page_iter().collect();
    for (place, &(id, entry)) in row.iter().enumerate() {
        let mut item = dictionary! {
            "Title" => text_string(&entry.title),
            "Parent" => parent,
        };
        if let Some(&(before, _)) = place.checked_sub(1).and_then(|place| row.get(place)) {
            item.set("Prev", before);
        }
        if let Some(&(after, _)) = row.get(place + 1) {
            item.set("Next", after);
        }
        if let Some(&page) = pages.get(entry.page) {
            // A little above the heading, so that it does not touch the window's edge.
            let top = flow.frame.page_height - entry.y + 6.0;
            let place: Vec<Object> = vec![
                page.into(),
                "XYZ".into(),
                0.into(),
                top.into(),
                Object::Null,
            ];
            item.set("Dest", place);
        }
        file.set_object(id, item);
    }
}
