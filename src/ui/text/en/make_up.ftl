# Solutions and glue mixes: why one cannot be made up.

# Solutions
make-up-amount = Amount wanted: { $given } cannot be made up.
    .fix = Type an amount above zero that a tank holds, such as { $example }.
make-up-concentration = Concentration: { $given } cannot be.
    .fix = Enter the salt per solution by mass, above 0 and below 100 %, such as 20 %.
make-up-density = Measured density: { $given } cannot be.
    .fix = Enter a density above zero, or leave the box blank to take the table's.
make-up-temperature = Coldest temperature: how much dissolves at { $given } is not known here.
    .fix = Enter a temperature from { $least } to { $most }.
make-up-saturation = Concentration: { $solute } does not dissolve to { $given } at { $temperature }; at most { $largest } does.
    .fix = Make it weaker, with some distance from { $largest }, or keep tank and pipes warmer. The solubility is unverified: try it in a beaker.
make-up-no-table = Amount wanted: a volume needs the density, and there is no table for { $solute }.
    .fix = Ask for the solution by mass, or measure its density and type it.
make-up-outside-table = Amount wanted: a volume needs the density, and the table for { $solute } ends at { $most }, below { $given }.
    .fix = Ask for the solution by mass, or measure its density and type it.

# Glue mixes
# A part without a name.
make-up-part = Part { $number }
make-up-isocyanate-with-water = Glue: an isocyanate and a liquid with water cannot share a tank. They react, the gas builds pressure, and the mix sets.
    .fix = Take the isocyanate out of the tank and emulsify it at the nozzle.
make-up-nothing-to-mix = Glue: there is nothing to mix.
    .fix = Give at least one part a share above zero, such as 100 parts of resin.
make-up-too-many-parts = Glue: { $given } parts are more than the { $most } that a mix holds.
    .fix = Remove parts.
make-up-part-share = { $part }: { $given } parts by mass cannot be.
    .fix = Type zero or more, such as 100.
make-up-part-solids = { $part }: solids of { $given } cannot be.
    .fix = Type solids from 0 to 100 % by mass; water has 0 %.
make-up-part-density = { $part }: a density of { $given } cannot be.
    .fix = Enter a density above zero, such as { $example }.
make-up-parts-differ = Glue: the parts differ too much in size to compute the mix.
    .fix = Check the shares for a slip in the decimal mark or the unit.
