// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import dev.infiltration.method.Basis;
import dev.infiltration.rate.RingTerm.Goes;
import dev.infiltration.rate.Uncertainty.Contribution;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.InfiltrationRate;
import dev.infiltration.units.Reading;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;

/**
 * The uncertainty of one ring test, term by term: {@code u²(I)/I² = u²(M)/M² + 4·u²(D)/D² + u²(t)/t² + u²(ρ)/ρ²}.
 *
 * <p>Derived from {@code I = K·M/(D²·t)} by the law of propagation of uncertainty (JCGM 100:2008, 5.1). {@link Instruments}
 * make one of a run from readings and instruments. Reaction, end point and seal have no default, for no published figure was
 * found: {@link #leftOut} lists what nobody stated. A leaking seal only ever raises the rate: a {@link LeakBias} is shown
 * apart, and never goes into the ±.
 *
 * <pre>{@code
 * UncertaintyBudget budget = UncertaintyBudget.of(rate, 18.00, 300, 60.0)
 *         .withMass("V1 A1 run 1, poured", Reading.of("18.00", FieldUnit.KILOGRAM))
 *         .withDiameters("ring R1", ring.diametersInUse())
 *         .withElapsed("V1 A1 run 1, watch", Reading.of("60.0", FieldUnit.SECOND))
 *         .with(RingTerm.END_POINT, Term.of("V1 A1 run 1, end point", 0, Distribution.rectangular(2)));
 * budget.uncertainty().expanded(0.95);      // mm/h
 * }</pre>
 *
 * <p>Names are identities ({@link Term}): the mean of several budgets by {@link Uncertainty#mean} keeps what ring and
 * balance share, and averages the rest.
 */
public final class UncertaintyBudget {

    /** Statement of an uncertainty that covers only readings and instruments. */
    public static final String INSTRUMENTS_ONLY = "instruments only; seal and end point not included";

    private static final double NOMINAL_DENSITY = 1000;
    private static final Water HEAVIEST = Water.at(3.98);
    private static final double LEVEL = 0.95;

    /** How far an end of the linear interval may be off, as a share of the expanded uncertainty. */
    private static final double MOST_OFF = 0.05;

    private static final String LOPSIDED = "; for so short a time the interval is lopsided: use trials";

    private final RunAmounts run;
    private final @Nullable LeakBias seal;
    private final List<Line> lines;

    /** Squared standard uncertainties of mass, diameter, time and volume, so that a rate costs one square root. */
    private final double massSquare;

    private final double diameterSquare;
    private final double timeSquare;
    private final double volumeSquare;

    /** A term and what it is about. */
    record Line(RingTerm kind, Term term) {}

    private UncertaintyBudget(RunAmounts run, @Nullable LeakBias seal, List<Line> lines) {
        this.run = run;
        this.seal = seal;
        this.lines = lines;
        this.massSquare = square(Goes.WITH_MASS);
        this.diameterSquare = square(Goes.WITH_DIAMETER);
        this.timeSquare = square(Goes.WITH_TIME);
        this.volumeSquare = square(Goes.WITH_VOLUME);
    }

    private double square(Goes goes) {
        double sum = 0;
        for (Line line : lines) {
            double u = line.term().spread().standardUncertainty();
            sum += line.kind().goes() == goes ? u * u : 0;
        }
        return sum;
    }

    /**
     * {@return a budget without terms}
     *
     * @param rate        the rate of the test, with either constant
     * @param kilograms   mass of infiltrated water, above 0
     * @param millimetres inside diameter of the ring, above 0
     * @param seconds     time to infiltrate, above 0
     * @throws IllegalArgumentException if mass, diameter or time is not finite and above 0
     */
    public static UncertaintyBudget of(InfiltrationRate rate, double kilograms, double millimetres, double seconds) {
        RunAmounts run = new RunAmounts(rate, kilograms, millimetres, seconds);
        return new UncertaintyBudget(run, null, List.of());
    }

    /**
     * {@return this budget with one more term}
     *
     * @param kind what the term is about
     * @param term a deviation: its value is 0, its spread in the unit of the kind
     * @throws IllegalArgumentException if the value is not 0 or the name is in the budget already
     */
    public UncertaintyBudget with(RingTerm kind, Term term) {
        return with(List.of(new Line(kind, term)));
    }

    private UncertaintyBudget with(RingTerm kind, List<Term> terms) {
        return with(terms.stream().map(term -> new Line(kind, term)).toList());
    }

    UncertaintyBudget with(List<Line> more) {
        List<Line> all = new ArrayList<>(lines);
        Set<String> names = new HashSet<>();
        lines.forEach(line -> names.add(line.term().name()));
        for (Line line : more) {
            if (line.term().value() != 0) {
                throw new IllegalArgumentException("term: expected a deviation about 0, found " + line.term());
            }
            String name = line.term().name();
            if (!names.add(name)) {
                throw new IllegalArgumentException("term: expected another name, found " + name + " twice");
            }
            all.add(line);
        }
        return new UncertaintyBudget(run, seal, List.copyOf(all));
    }

    /**
     * {@return this budget with a reading of mass}: half of its stated resolution to either side, else half a unit of the
     * last digit written; a mass before less a mass after is two readings
     *
     * @param name    names the reading
     * @param reading the reading
     */
    public UncertaintyBudget withMass(String name, Reading<Mass> reading) {
        return with(RingTerm.MASS_READING, ReadTerms.reading(name, reading, FieldUnit.KILOGRAM, 1));
    }

    /**
     * {@return this budget with the readings whose mean is the diameter}: each as {@link #withMass} takes a reading, and
     * how far they differ: half their range to either side for two or three, the standard deviation of the mean for more
     *
     * @param ring      names the ring
     * @param diameters the readings
     */
    public UncertaintyBudget withDiameters(String ring, List<Reading<Length>> diameters) {
        UncertaintyBudget read = with(RingTerm.DIAMETER_READING, ReadTerms.diameters(ring, diameters));
        return diameters.size() < 2 ? read : read.with(RingTerm.ROUNDNESS, ReadTerms.roundness(ring, diameters));
    }

    /**
     * {@return this budget with the reading of the watch}, as {@link #withMass} takes a reading
     *
     * @param name    names the reading
     * @param reading the elapsed time
     */
    public UncertaintyBudget withElapsed(String name, Reading<Time> reading) {
        return with(RingTerm.WATCH_READING, ReadTerms.reading(name, reading, FieldUnit.SECOND, 1));
    }

    /**
     * {@return this budget with water of a temperature known within limits}: half the range of its density to either side.
     * The offset of the method's nominal 1000 kg/m³ is no part of it
     *
     * @param name   names the water
     * @param colder the coldest it may have been
     * @param warmer the warmest it may have been
     * @throws IllegalArgumentException if the first is the warmer one
     */
    public UncertaintyBudget withWater(String name, Water colder, Water warmer) {
        if (colder.celsius() > warmer.celsius()) {
            throw new IllegalArgumentException("colder: allowed up to " + warmer + ", found " + colder);
        }
        boolean turns = colder.celsius() < HEAVIEST.celsius() && HEAVIEST.celsius() < warmer.celsius();
        double lightest = Math.min(colder.density(), warmer.density());
        double heaviest = turns ? HEAVIEST.density() : Math.max(colder.density(), warmer.density());
        Basis basis = new Basis(Water.SOURCE, "density between two temperatures", Basis.Trust.DERIVED);
        Distribution spread = Distribution.rectangular((heaviest - lightest) / 2 / NOMINAL_DENSITY);
        return with(RingTerm.WATER_DENSITY, new Term(name, 0, spread, basis));
    }

    /**
     * {@return this budget with how far the judgement "no free water left" may be off}: to either side, rectangular; unchanged
     * where the time is not positive or too large to compute with
     *
     * @param name   names the judgement: of one name it is the same error in each run, and does not average out
     * @param within the time by which it may be off, either way
     */
    public UncertaintyBudget withEndPoint(String name, Reading<Time> within) {
        double seconds = within.in(FieldUnit.SECOND);
        if (!(seconds > 0) || Double.isInfinite(seconds)) {
            return this;
        }
        Basis basis = new Basis("stated with the visit", "", Basis.Trust.USER);
        UncertaintyBudget budget =
                with(RingTerm.END_POINT, new Term(name, 0, Distribution.rectangular(seconds), basis));
        return budget.uncertainty().isWithinMeasure() ? budget : this;
    }

    /**
     * {@return this budget with a seal that may leak}: a bias to one side, never part of the ±
     *
     * @param bias what the seal may lose
     */
    public UncertaintyBudget withSeal(LeakBias bias) {
        return new UncertaintyBudget(run, Objects.requireNonNull(bias, "bias"), lines);
    }

    /** {@return the relative standard uncertainty of the rate}: 0.02 for 2 % */
    public double relativeStandardUncertainty() {
        return relativeStandardUncertainty(run.kilograms(), run.millimetres(), run.seconds());
    }

    /**
     * {@return the relative standard uncertainty of another rate with the same terms}: one square root, nothing allocated
     *
     * @param kilograms   mass of infiltrated water
     * @param millimetres inside diameter of the ring
     * @param seconds     time to infiltrate
     */
    public double relativeStandardUncertainty(double kilograms, double millimetres, double seconds) {
        return Math.sqrt(massSquare / (kilograms * kilograms)
                + 4 * diameterSquare / (millimetres * millimetres)
                + timeSquare / (seconds * seconds)
                + volumeSquare);
    }

    /** {@return the rate in mm/h with its uncertainty, term by term} */
    public Uncertainty uncertainty() {
        List<Contribution> contributions = new ArrayList<>(lines.size());
        for (Line line : lines) {
            contributions.add(new Contribution(line.term(), sensitivity(line)));
        }
        return new Uncertainty(run.rate().millimetresPerHour(), contributions, Correlation.NONE, 0);
    }

    /** By how many mm/h the rate changes for a unit of a term. */
    private double sensitivity(Line line) {
        return run.rate().millimetresPerHour() * run.relativeSensitivity(line.kind());
    }

    /** {@return the model of this test, for trials or second-order terms}: the terms move the rate, in mm/h */
    public MeasurementModel measurement() {
        List<RingTerm> kinds = lines.stream().map(Line::kind).toList();
        double[] sensitivities = lines.stream().mapToDouble(this::sensitivity).toArray();
        return MeasurementModel.of(
                        deviations -> run.rate(kinds, deviations),
                        lines.stream().map(Line::term).toList())
                .withSensitivities(sensitivities);
    }

    /**
     * {@return whether a kind of term is in this budget}
     *
     * @param kind the kind
     */
    public boolean includes(RingTerm kind) {
        return lines.stream().anyMatch(line -> line.kind() == kind);
    }

    /** {@return what nobody stated, in words: kinds of terms, and the seal} */
    public List<String> leftOut() {
        return words().leftOut();
    }

    /** {@return the sources of uncertainty that the ± covers}: {@link #INSTRUMENTS_ONLY}, or more where more was stated */
    public String label() {
        return words().label();
    }

    private BudgetWords words() {
        return new BudgetWords(run, seal, lines);
    }

    /**
     * {@return the least that the rate would be if the seal lost all that it may}; empty where nothing was stated of the seal
     */
    public Optional<InfiltrationRate> rateIfSealLeaks() {
        return Optional.ofNullable(seal).map(bias -> bias.least(run.rate()));
    }

    /**
     * {@return the rate with its expanded uncertainty for people, the sources that the ± covers, and the bias of the seal separately}
     *
     * @param level the level of confidence, 0.95 for 95 %
     * @param unit  the unit to print
     * @throws IllegalArgumentException if the level is not between 0 and 1
     */
    public String text(double level, FieldUnit<Speed> unit) {
        Uncertainty read = uncertainty().times(new InfiltrationRate(1).in(unit));
        String bias = rateIfSealLeaks()
                .map(rate -> "; " + seal + ": the rate may be as low as "
                        + Rounding.atLeast(rate.in(unit), read.expanded(level)) + " " + unit.symbol())
                .orElse("");
        return read.text(level, unit.symbol()) + "; " + label() + bias + (isLopsided() ? LOPSIDED : "");
    }

    /**
     * {@return whether the time is so short for its uncertainty that the true interval is lopsided}: an end of the linear
     * interval is off by {@code k·u(t)/t} of the expanded uncertainty (derived), here by more than a twentieth. Use
     * {@link MonteCarlo} there
     */
    public boolean isLopsided() {
        double ofTime = Math.sqrt(timeSquare) / run.seconds();
        double all = relativeStandardUncertainty();
        return all > 0
                && Uncertainty.coverageFactor(LEVEL, Double.POSITIVE_INFINITY) * ofTime * ofTime / all > MOST_OFF;
    }

    /** {@return a table of the terms for people: name, kind, spread, relative sensitivity, what it adds in per cent, basis} */
    public String table() {
        return words().table();
    }

    /** {@return the rate for people in mm/h with its 95 % expanded uncertainty and the sources that it covers} */
    @Override
    public String toString() {
        return text(LEVEL, FieldUnit.MILLIMETRE_PER_HOUR);
    }
}
