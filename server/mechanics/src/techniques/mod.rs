//! One file, or one folder, a technique.

pub mod air_ram;
pub mod blank_firing;
pub mod blast_stand_off;
pub mod body_gimbal;
pub mod car_hit;
pub mod dead_man_line;
pub mod descender_drop;
pub mod fight;
pub mod full_burn;
pub mod glass_exit;
pub mod high_fall;
pub mod horse_fall;
pub mod lock_off_composite;
pub mod motorcycle_jump;
pub mod occluder_switch;
pub mod pod_car;
pub mod ratchet_pull;
pub mod run_assist;
pub mod slide_in;
pub mod stair_fall;
pub mod towed_surface;
pub mod vehicle_roll;
pub mod water_work;
pub mod wire_flight;
