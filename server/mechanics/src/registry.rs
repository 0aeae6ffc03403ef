//! The one list of techniques.

use crate::{
    technique::Technique,
    techniques::{
        air_ram::AirRam, blank_firing::BlankFiring, blast_stand_off::BlastStandOff,
        body_gimbal::BodyGimbal, car_hit::CarHit, dead_man_line::DeadManLine,
        descender_drop::DescenderDrop, fight::Fight, full_burn::FullBurn, glass_exit::GlassExit,
        high_fall::HighFall, horse_fall::HorseFall, lock_off_composite::LockOffComposite,
        motorcycle_jump::MotorcycleJump, occluder_switch::OccluderSwitch, pod_car::PodCar,
        ratchet_pull::RatchetPull, run_assist::RunAssist, slide_in::SlideIn, stair_fall::StairFall,
        towed_surface::TowedSurface, vehicle_roll::VehicleRoll, water_work::WaterWork,
        wire_flight::WireFlight,
    },
};

/// Every technique, in the order people are offered them.
pub fn techniques() -> &'static [&'static dyn Technique] {
    &[
        &HighFall,
        &RatchetPull,
        &WireFlight,
        &FullBurn,
        &DescenderDrop,
        &DeadManLine,
        &OccluderSwitch,
        &AirRam,
        &SlideIn,
        &CarHit,
        &GlassExit,
        &LockOffComposite,
        &WaterWork,
        &HorseFall,
        &BodyGimbal,
        &MotorcycleJump,
        &PodCar,
        &StairFall,
        &BlastStandOff,
        &Fight,
        &RunAssist,
        &TowedSurface,
        &VehicleRoll,
        &BlankFiring,
    ]
}

/// The technique of that machine name.
pub fn find(name: &str) -> Option<&'static dyn Technique> {
    techniques()
        .iter()
        .copied()
        .find(|technique| technique.name() == name)
}
