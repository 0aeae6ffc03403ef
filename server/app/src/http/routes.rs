//! The one route table. Each handler says in its file which permission it asks for; the API's
//! description is made from this very table, so nothing is served that is not described.

use actix_web::web;
use utoipa_actix_web::{OpenApiFactory, scope, service_config::ServiceConfig};

use super::{
    api::{
        day, delegations, devices, events, gags, handed, holds, invitations, me, members,
        on_the_day, people, policies, productions, sessions, setup, signoffs, status, techniques,
        trail,
    },
    openapi,
};

/// Everything under `/api/v1`.
fn table(api: &mut ServiceConfig<'_>) {
    // Asking for no token.
    api.service(status::read_status)
        .service(setup::set_up)
        .service(sessions::create::sign_in)
        .service(sessions::refresh::refresh_session)
        .service(sessions::end::sign_out)
        .service(invitations::accept::accept_invitation)
        .service(holds::raise_by_code::raise_hold_by_code);
    // For anyone signed in.
    api.service(me::password::change_password)
        .service(sessions::list::list_sign_ins)
        .service(sessions::end_one::end_other_sign_ins)
        .service(sessions::end_one::end_sign_in)
        .service(techniques::list::list_techniques)
        .service(techniques::assess::assess_technique)
        .service(techniques::limits::list_limits)
        .service(techniques::tools::spread)
        .service(techniques::tools::sensitivity)
        .service(techniques::tools::solve)
        .service(techniques::tools::calibrate)
        .service(techniques::tools::compare);
    // For members of the production, by permission.
    api.service(productions::read::read_production)
        .service(productions::today::read_today)
        .service(gags::list::list_gags)
        .service(gags::create::create_gag)
        .service(gags::read::read_gag)
        .service(gags::revise::revise_plan)
        .service(gags::plan::read_plan)
        .service(gags::matches::match_slot)
        .service(gags::packet::print_packet)
        .service(signoffs::draft::draft_signoff)
        .service(signoffs::submit::submit_signoff)
        .service(signoffs::meet::meet_condition)
        .service(signoffs::resolve::resolve_decline)
        .service(signoffs::photograph::keep_photograph)
        .service(signoffs::photograph::read_photograph)
        .service(policies::read::read_policy)
        .service(policies::read::read_policy_version)
        .service(policies::preview::preview_policy)
        .service(policies::put::put_policy)
        .service(delegations::list_delegations)
        .service(delegations::make_delegation)
        .service(delegations::end_delegation)
        .service(holds::list::list_holds)
        .service(holds::raise::raise_hold)
        .service(holds::agree::agree_to_release)
        .service(day::reading::log_reading)
        .service(day::run::log_run)
        .service(day::test_shot::list_test_shots)
        .service(day::test_shot::log_test_shot)
        .service(handed::carry::bring_handed)
        .service(on_the_day::equipment::read_day)
        .service(on_the_day::equipment::put_equipment)
        .service(on_the_day::equipment::quarantine_equipment)
        .service(on_the_day::equipment::release_equipment)
        .service(on_the_day::equipment::record_shock_load)
        .service(on_the_day::briefings::hold_briefing)
        .service(on_the_day::marks::draft_day_signoff)
        .service(on_the_day::marks::submit_day_signoff)
        .service(on_the_day::takes::call_go)
        .service(on_the_day::takes::end_take)
        .service(on_the_day::takes::record_look)
        .service(on_the_day::debriefs::hold_debrief)
        .service(on_the_day::stand_downs::stand_down)
        .service(on_the_day::stand_downs::bring_back)
        .service(on_the_day::incidents::report_incident)
        .service(on_the_day::incidents::tell_of_incident)
        .service(on_the_day::incidents::close_incident)
        .service(people::list::list_people)
        .service(people::read::read_person)
        .service(people::put::put_person)
        .service(people::erase::erase_person)
        .service(people::import::import_roster)
        .service(people::export::export_roster)
        .service(devices::list::list_devices)
        .service(devices::register::register_device)
        .service(devices::revoke::revoke_device)
        .service(invitations::list::list_invitations)
        .service(invitations::create::invite)
        .service(invitations::withdraw::withdraw_invitation)
        .service(members::list::list_members)
        .service(members::put::set_roles)
        .service(trail::changes::read_changes)
        .service(trail::page::read_trail)
        .service(trail::at::read_gag_at)
        .service(trail::checkpoint::read_checkpoint)
        .service(trail::proof::prove_leaf)
        .service(trail::consistency::prove_growth)
        .service(trail::export::export_trail)
        .service(trail::witnesses::list_witnesses)
        .service(trail::witnesses::add_witness)
        .service(trail::witnesses::remove_witness)
        .service(trail::witnesses::bring_cosignature)
        .service(events::listen);
}

/// The table's description.
pub fn described() -> utoipa::openapi::OpenApi {
    let scope = scope::scope("/api/v1").configure(table);
    let mut schemas = Vec::new();
    scope.schemas(&mut schemas);
    let components = utoipa::openapi::ComponentsBuilder::new()
        .schemas_from_iter(schemas)
        .build();
    utoipa::openapi::OpenApiBuilder::new()
        .paths(scope.paths())
        .components(Some(components))
        .build()
}

/// Registers the table, its description, and the refusals of all else under `/api`.
pub fn configure(config: &mut web::ServiceConfig) {
    openapi::configure(config);
    config
        .service(
            scope::scope("/api/v1")
                .configure(table)
                .default_service(web::to(openapi::fallback)),
        )
        .service(web::scope("/api").default_service(web::to(openapi::fallback)));
}
