//! Equilibrium moisture content of solid wood. Straw and bonded board take up less; the table is only indicative for them.

use crate::domain::chemistry::interpolate::linear;
use crate::quantity::Moisture;
use uom::si::f64::{Ratio, ThermodynamicTemperature};
use uom::si::ratio::percent;
use uom::si::thermodynamic_temperature::{degree_celsius, degree_fahrenheit};

/// Temperatures of the rows, °F.
const TEMPERATURES: [f64; 18] = [
    30.0, 40.0, 50.0, 60.0, 70.0, 80.0, 90.0, 100.0, 110.0, 120.0, 130.0, 140.0, 150.0, 160.0, 170.0, 180.0, 190.0,
    200.0,
];

/// Relative humidities of the columns, %.
const HUMIDITIES: [f64; 19] =
    [5.0, 10.0, 15.0, 20.0, 25.0, 30.0, 35.0, 40.0, 45.0, 50.0, 55.0, 60.0, 65.0, 70.0, 75.0, 80.0, 85.0, 90.0, 95.0];

/// Equilibrium moisture, % dry basis: a row a temperature, a column a relative humidity.
///
/// Source: Wood Handbook (2010), FPL-GTR-190, table 4-2.
#[rustfmt::skip]
const TABLE: [[f64; 19]; 18] = [
    [1.4, 2.6, 3.7, 4.6, 5.5, 6.3, 7.1, 7.9, 8.7, 9.5, 10.4, 11.3, 12.4, 13.5, 14.9, 16.5, 18.5, 21.0, 24.3],
    [1.4, 2.6, 3.7, 4.6, 5.5, 6.3, 7.1, 7.9, 8.7, 9.5, 10.4, 11.3, 12.3, 13.5, 14.9, 16.5, 18.5, 21.0, 24.3],
    [1.4, 2.6, 3.6, 4.6, 5.5, 6.3, 7.1, 7.9, 8.7, 9.5, 10.3, 11.2, 12.3, 13.4, 14.8, 16.4, 18.4, 20.9, 24.3],
    [1.3, 2.5, 3.6, 4.6, 5.4, 6.2, 7.0, 7.8, 8.6, 9.4, 10.2, 11.1, 12.1, 13.3, 14.6, 16.2, 18.2, 20.7, 24.1],
    [1.3, 2.5, 3.5, 4.5, 5.4, 6.2, 6.9, 7.7, 8.5, 9.2, 10.1, 11.0, 12.0, 13.1, 14.4, 16.0, 17.9, 20.5, 23.9],
    [1.3, 2.4, 3.5, 4.4, 5.3, 6.1, 6.8, 7.6, 8.3, 9.1, 9.9, 10.8, 11.7, 12.9, 14.2, 15.7, 17.7, 20.2, 23.6],
    [1.2, 2.3, 3.4, 4.3, 5.1, 5.9, 6.7, 7.4, 8.1, 8.9, 9.7, 10.5, 11.5, 12.6, 13.9, 15.4, 17.3, 19.8, 23.3],
    [1.2, 2.3, 3.3, 4.2, 5.0, 5.8, 6.5, 7.2, 7.9, 8.7, 9.5, 10.3, 11.2, 12.3, 13.6, 15.1, 17.0, 19.5, 22.9],
    [1.1, 2.2, 3.2, 4.0, 4.9, 5.6, 6.3, 7.0, 7.7, 8.4, 9.2, 10.0, 11.0, 12.0, 13.2, 14.7, 16.6, 19.1, 22.4],
    [1.1, 2.1, 3.0, 3.9, 4.7, 5.4, 6.1, 6.8, 7.5, 8.2, 8.9, 9.7, 10.6, 11.7, 12.9, 14.4, 16.2, 18.6, 22.0],
    [1.0, 2.0, 2.9, 3.7, 4.5, 5.2, 5.9, 6.6, 7.2, 7.9, 8.7, 9.4, 10.3, 11.3, 12.5, 14.0, 15.8, 18.2, 21.5],
    [0.9, 1.9, 2.8, 3.6, 4.3, 5.0, 5.7, 6.3, 7.0, 7.7, 8.4, 9.1, 10.0, 11.0, 12.1, 13.6, 15.3, 17.7, 21.0],
    [0.9, 1.8, 2.6, 3.4, 4.1, 4.8, 5.5, 6.1, 6.7, 7.4, 8.1, 8.8, 9.7, 10.6, 11.8, 13.1, 14.9, 17.2, 20.4],
    [0.8, 1.6, 2.4, 3.2, 3.9, 4.6, 5.2, 5.8, 6.4, 7.1, 7.8, 8.5, 9.3, 10.3, 11.4, 12.7, 14.4, 16.7, 19.9],
    [0.7, 1.5, 2.3, 3.0, 3.7, 4.3, 4.9, 5.6, 6.2, 6.8, 7.4, 8.2, 9.0, 9.9, 11.0, 12.3, 14.0, 16.2, 19.3],
    [0.7, 1.4, 2.1, 2.8, 3.5, 4.1, 4.7, 5.3, 5.9, 6.5, 7.1, 7.8, 8.6, 9.5, 10.5, 11.8, 13.5, 15.7, 18.7],
    [0.6, 1.3, 1.9, 2.6, 3.2, 3.8, 4.4, 5.0, 5.5, 6.1, 6.8, 7.5, 8.2, 9.1, 10.1, 11.4, 13.0, 15.1, 18.1],
    [0.5, 1.1, 1.7, 2.4, 3.0, 3.5, 4.1, 4.6, 5.2, 5.8, 6.4, 7.1, 7.8, 8.7, 9.7, 10.9, 12.5, 14.6, 17.5],
];

/// Equilibrium moisture of solid wood at a temperature and a relative humidity, by straight lines between the cells of the
/// table. Valid from 30 to 200 °F and from 5 to 95 %; `None` outside.
#[must_use]
pub fn equilibrium_moisture(temperature: ThermodynamicTemperature, humidity: Ratio) -> Option<Moisture> {
    let (fahrenheit, humidity) = (temperature.get::<degree_fahrenheit>(), humidity.get::<percent>());
    let at_humidity = |row: &[f64; 19]| {
        let mut cells = [(0.0, 0.0); 19];
        for (cell, (humidity, moisture)) in cells.iter_mut().zip(HUMIDITIES.iter().zip(row)) {
            *cell = (*humidity, *moisture);
        }
        linear(&cells, humidity)
    };
    let mut column = [(0.0, 0.0); 18];
    for (cell, (temperature, row)) in column.iter_mut().zip(TEMPERATURES.iter().zip(&TABLE)) {
        *cell = (*temperature, at_humidity(row)?);
    }
    Moisture::from_dry_basis(linear(&column, fahrenheit)? / 100.0)
}

/// The moisture of solid wood at 20 °C and 65 %, the climate that test standards condition boards in.
#[must_use]
pub fn at_standard_climate() -> Option<Moisture> {
    equilibrium_moisture(ThermodynamicTemperature::new::<degree_celsius>(20.0), Ratio::new::<percent>(65.0))
}
