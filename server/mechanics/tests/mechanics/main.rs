//! The mechanics held against outside values, reference libraries and their own rules. One program, since each
//! more is linked by itself.

#![allow(missing_docs, clippy::unwrap_used, clippy::expect_used, clippy::panic)]

mod check_values;
mod check_values_heat;
mod common;
mod every_technique;
mod inside_tolerances;
mod judgements;
mod reference_heat;
mod reference_motion;
mod reference_rigging;
mod risk;
mod scipy;
mod strides;
mod techniques_air_ram;
mod techniques_blank_firing;
mod techniques_blast;
mod techniques_body_gimbal;
mod techniques_camera;
mod techniques_dead_man_line;
mod techniques_descender_drop;
mod techniques_fight;
mod techniques_glass;
mod techniques_high_fall;
mod techniques_horse_fall;
mod techniques_lock_off;
mod techniques_motorcycle;
mod techniques_pod_car;
mod techniques_running;
mod techniques_stair_fall;
mod techniques_vehicle_roll;
mod techniques_vehicles;
mod techniques_water;
mod techniques_wire_flight;
mod tools;
mod units;
mod vectors;
mod weather;
