// Plain numbers, no field book: rates in mm/h, invented. Each result prints as a small table.
//     bash infiltration-examples/shell infiltration-examples/demo/rates.jsh

double[] before = {620, 1090, 1550, 1610, 880, 1530};
double[] after = {4540, 5720, 6760, 7940, 5140, 6910};
double[] fresh = {7670, 8390, 10700, 11500, 8420, 10000};

// a surface over its locations
RateSummary summary = RateSummary.of(Sample.random(after));
System.out.println(summary);

// a decision by your own limit
Criterion limit = Criterion.of(Criterion.Type.MEAN, Criterion.Relation.AT_LEAST,
    Reading.of("100", FieldUnit.INCH_PER_HOUR), "unit-pavement", "invented");
System.out.println(Decision.of(limit, summary));

// the share of the area that passes, the locations it takes
System.out.println(new PassingShare(6, 6));
System.out.println(ScatterPlan.ofCv(1).locationsFor(1.5, 0.95).getAsInt());

// before and after, recovery, second run against first, two groups, several
System.out.println(PairedComparison.of(before, after));
System.out.println(Recovery.of(fresh, before, after));
System.out.println(PairedComparison.ofRuns(new double[] {5400, 6100, 4800}, new double[] {5100, 5900, 4700}));
System.out.println(GroupComparison.of(before, fresh));
System.out.println(SeveralGroups.of(Map.of("before", before, "after", after)));

// loss over the years, and when a test will read the limit
LogTrend trend = LogTrend.of(new double[] {0, 1, 2, 3, 4}, new double[] {6060, 5010, 3960, 3050, 2590});
System.out.println(trend);
System.out.println(trend.crossing(2540, 0.95).orElseThrow());
System.out.println(MannKendall.of(1, 3, 2, 4, 5));
