// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.field;

/**
 * The length of the shortest line on WGS 84 between two points, exact to rounding for short and long lines.
 *
 * <p>Bessel's integrals as in Karney 2013, Algorithms for geodesics, J. Geod. 87(1), equations 7 and 8 (published), by
 * Gauss–Legendre quadrature. The spherical longitude is found by fixed-point iteration, which converges in a few steps except
 * for nearly opposite points; for those the azimuth is bisected.
 */
final class Geodesic {

    /** Equatorial radius in metres and flattening: NGA.STND.0036, World Geodetic System 1984 (published). */
    private static final double A = 6_378_137;

    private static final double F = 1 / 298.257223563;
    private static final double B = A * (1 - F);
    private static final double SECOND_ECCENTRICITY_SQUARED = F * (2 - F) / ((1 - F) * (1 - F));

    /** Ten points: Abramowitz and Stegun 1964, table 25.4 (published); for half a turn the error is below 1e-15. */
    private static final double[] NODES = {
        0.1488743389816312, 0.4333953941292472, 0.6794095682990244, 0.8650633666889845, 0.9739065285171717
    };

    private static final double[] WEIGHTS = {
        0.2955242247147529, 0.2692667193099963, 0.2190863625159820, 0.1494513491505806, 0.0666713443086881
    };

    private static final int FIXED_POINT_STEPS = 40;
    private static final int BISECTIONS = 60;
    private static final double CONVERGED = 1e-15;

    /** In place of the latitude 0, so that the azimuth at the equator is defined. */
    private static final double TINY = 1e-150;

    /** An arc of the auxiliary sphere: k squared, the sine of the azimuth at the equator, the start and the length. */
    private record Arc(double kSquared, double sinAlpha0, double sigma1, double sigma12) {

        static Arc of(double sinAlpha0, double cosAlpha0, double sigma1, double sigma12) {
            return new Arc(SECOND_ECCENTRICITY_SQUARED * cosAlpha0 * cosAlpha0, sinAlpha0, sigma1, sigma12);
        }

        /** {@return the length of the geodesic in metres} */
        double metres() {
            return B * sigma12 * mean(false);
        }

        /** {@return the longitude on the sphere less that on the ellipsoid, in radians} */
        double excess() {
            return F * sinAlpha0 * sigma12 * mean(true);
        }

        /** {@return the mean of the integrand of equation 8 or 7 over the arc} */
        private double mean(boolean isLongitude) {
            double sum = 0;
            for (int i = 0; i < NODES.length; i++) {
                double below = at(0.5 - NODES[i] / 2, isLongitude);
                double above = at(0.5 + NODES[i] / 2, isLongitude);
                sum += WEIGHTS[i] * (below + above) / 2;
            }
            return sum;
        }

        private double at(double share, boolean isLongitude) {
            double sine = StrictMath.sin(sigma1 + share * sigma12);
            double root = Math.sqrt(1 + kSquared * sine * sine);
            return isLongitude ? (2 - F) / (1 + (1 - F) * root) : root;
        }
    }

    private final double sin1;
    private final double cos1;
    private final double sin2;
    private final double cos2;

    /** The sine of the difference of the reduced latitudes, without cancellation. */
    private final double sinBetween;

    private final double lambda;

    private Geodesic(double latitude1, double latitude2, double lambda) {
        double phi1 = Math.toRadians(latitude1);
        double phi2 = Math.toRadians(latitude2);
        double norm1 = StrictMath.hypot(StrictMath.cos(phi1), (1 - F) * StrictMath.sin(phi1));
        double norm2 = StrictMath.hypot(StrictMath.cos(phi2), (1 - F) * StrictMath.sin(phi2));
        this.sin1 = (1 - F) * StrictMath.sin(phi1) / norm1;
        this.cos1 = StrictMath.cos(phi1) / norm1;
        this.sin2 = (1 - F) * StrictMath.sin(phi2) / norm2;
        this.cos2 = StrictMath.cos(phi2) / norm2;
        this.sinBetween = (1 - F) * StrictMath.sin(Math.toRadians(latitude2 - latitude1)) / (norm1 * norm2);
        this.lambda = lambda;
    }

    /**
     * {@return the length of the geodesic between two points of WGS 84, in metres}
     *
     * @param latitude1  degrees north, from -90 to 90
     * @param longitude1 degrees east
     * @param latitude2  degrees north, from -90 to 90
     * @param longitude2 degrees east
     */
    static double metres(double latitude1, double longitude1, double latitude2, double longitude2) {
        double lambda = Math.toRadians(Math.abs(Math.IEEEremainder(longitude2 - longitude1, 360)));
        boolean isOrdered = Math.abs(latitude1) >= Math.abs(latitude2);
        double far = isOrdered ? latitude1 : latitude2;
        double near = isOrdered ? latitude2 : latitude1;
        return new Geodesic(-Math.abs(far), far > 0 ? -near : near, lambda).metres();
    }

    private double metres() {
        double omega = lambda;
        for (int i = 0; i < FIXED_POINT_STEPS; i++) {
            Arc arc = onSphere(omega);
            double next = lambda + arc.excess();
            if (Math.abs(next - omega) <= CONVERGED * omega) {
                return arc.metres();
            }
            omega = next;
        }
        return byAzimuth();
    }

    /** {@return the arc between the reduced latitudes for a longitude on the sphere} */
    private Arc onSphere(double omega) {
        double half = StrictMath.sin(omega / 2);
        double north = sinBetween + 2 * sin1 * cos2 * half * half;
        double east = cos2 * StrictMath.sin(omega);
        double sinSigma = StrictMath.hypot(north, east);
        if (sinSigma == 0) {
            return Arc.of(0, 1, StrictMath.asin(sin1), 0);
        }
        double sigma12 = StrictMath.atan2(sinSigma, sin1 * sin2 + cos1 * cos2 * StrictMath.cos(omega));
        return arcAt(east / sinSigma, north / sinSigma, sigma12);
    }

    private Arc arcAt(double sinAlpha1, double cosAlpha1, double sigma12) {
        double cosAlpha0 = StrictMath.hypot(sin1, cos1 * cosAlpha1);
        return Arc.of(cos1 * sinAlpha1, cosAlpha0, StrictMath.atan2(sin1, cos1 * cosAlpha1), sigma12);
    }

    /** The first point is at least as far from the equator as the second and south of it: the longitude grows with the azimuth. */
    private double byAzimuth() {
        double low = 0;
        double high = Math.PI;
        for (int i = 0; i < BISECTIONS; i++) {
            double alpha = (low + high) / 2;
            if (longitude(alpha) < lambda) {
                low = alpha;
            } else {
                high = alpha;
            }
        }
        return arc(high).metres();
    }

    /** {@return the arc that leaves the first point at an azimuth and ends at the second latitude, going north} */
    private Arc arc(double alpha) {
        double sinAlpha1 = StrictMath.sin(alpha);
        double cosAlpha1 = StrictMath.cos(alpha);
        double sigma1 = StrictMath.atan2(Math.min(sin1, -TINY), cos1 * cosAlpha1);
        return arcAt(sinAlpha1, cosAlpha1, StrictMath.atan2(sin2, northward(cosAlpha1)) - sigma1);
    }

    /** {@return cos α2 cos β2} */
    private double northward(double cosAlpha1) {
        double square = cos1 * cosAlpha1 * cos1 * cosAlpha1 + (cos2 - cos1) * (cos2 + cos1);
        return Math.sqrt(Math.max(0, square));
    }

    /** {@return the longitude between the points on the ellipsoid, in radians} */
    private double longitude(double alpha) {
        double sinAlpha0 = cos1 * StrictMath.sin(alpha);
        double cosAlpha1 = StrictMath.cos(alpha);
        double omega1 = StrictMath.atan2(sinAlpha0 * Math.min(sin1, -TINY), cos1 * cosAlpha1);
        double omega2 = StrictMath.atan2(sinAlpha0 * sin2, northward(cosAlpha1));
        return omega2 - omega1 - arc(alpha).excess();
    }
}
