//! What an air ram answers.

use crate::{describe::figure, technique::FigureDescription, units::Quantity};

pub(super) static FIGURES: [FigureDescription; 23] = [
    figure(
        "launch_speed",
        "Launch speed",
        Quantity::Speed,
        "Of the body as it leaves the plate.",
    ),
    figure(
        "launch_angle",
        "Launch angle",
        Quantity::Angle,
        "Of that speed above the horizontal.",
    ),
    figure(
        "apex",
        "Highest point",
        Quantity::Length,
        "Of the body's centre above the floor.",
    ),
    figure(
        "landing_distance",
        "Landing distance",
        Quantity::Length,
        "Along the floor from the marked feet to where the body's centre lands, in still air.",
    ),
    figure(
        "peak_felt",
        "Peak through the legs",
        Quantity::Acceleration,
        "Highest along the body while the plate pushes, gravity included.",
    ),
    figure(
        "dynamic_response",
        "Dynamic response",
        Quantity::Acceleration,
        "How far the launch shakes the spine upward (dynamic response model).",
    ),
    figure(
        "miss_probability",
        "Chance of missing",
        Quantity::Ratio,
        "Chance that the body's centre comes down outside the mat less its margin. 1 in a thousand million means that or less.",
    ),
    figure(
        "flight_time",
        "Flight time",
        Quantity::Time,
        "From leaving the plate to landing.",
    ),
    figure(
        "landing_speed",
        "Landing speed",
        Quantity::Speed,
        "Speed at which the body meets the mat.",
    ),
    figure(
        "landing_mean",
        "Mean while stopping",
        Quantity::Acceleration,
        "What the body feels on average in the mat, gravity included: v² / (2 s) + g.",
    ),
    figure(
        "headroom",
        "Headroom",
        Quantity::Length,
        "From the highest point of the body's centre to what is above it.",
    ),
    figure(
        "rise_time",
        "Rise time",
        Quantity::Time,
        "From a tenth to nine tenths of the way to the peak: a short rise is a hard kick.",
    ),
    figure(
        "push_time",
        "Push time",
        Quantity::Time,
        "From the first movement to leaving the plate.",
    ),
    figure(
        "trigger_time",
        "Time from the trigger",
        Quantity::Time,
        "From the trigger to leaving the plate: how early to fire on the performer's cue.",
    ),
    figure(
        "plate_force",
        "Push of the plate",
        Quantity::Force,
        "Highest on the feet, square to the plate.",
    ),
    figure(
        "plate_factor",
        "Plate factor",
        Quantity::Ratio,
        "Strength of plate and arm over that push.",
    ),
    figure(
        "stroke_needed",
        "Stroke needed",
        Quantity::Length,
        "What the arm asks of the cylinder from rest to its stop.",
    ),
    figure(
        "stop_energy",
        "Energy at the arm's stop",
        Quantity::Energy,
        "Of the arm alone when the body has left.",
    ),
    figure(
        "pressure_left",
        "Pressure left",
        Quantity::Pressure,
        "Gauge pressure in the reservoir when the body leaves.",
    ),
    figure(
        "landing_half_length",
        "Landing scatter along",
        Quantity::Length,
        "Half the length of the ellipse that holds 99 of 100 landings.",
    ),
    figure(
        "landing_half_width",
        "Landing scatter across",
        Quantity::Length,
        "Half the width of the ellipse that holds 99 of 100 landings.",
    ),
    figure(
        "mat_length_needed",
        "Mat length needed",
        Quantity::Length,
        "Length, placed as planned, for the accepted chance of missing.",
    ),
    figure(
        "mat_width_needed",
        "Mat width needed",
        Quantity::Length,
        "Width for the accepted chance of missing.",
    ),
];
