// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.field;

import jakarta.validation.Valid;
import java.util.List;
import java.util.Map;

/**
 * Everything that was written down: sites, rings, instruments, visits and maintenance, nothing derived.
 *
 * <p>It holds a bad day as well as a good one: any part may be missing, zero, negative or contradictory, and is then
 * spoken of by a rule.
 *
 * <p>Ids are unique among records of their kind, location ids on their surface; of doubled records the first is
 * meant.
 *
 * @param sites       the places where surfaces lie
 * @param rings       the infiltration rings in use
 * @param instruments balances, watches, tapes and thermometers in use
 * @param visits      what was done, a visit to one surface at a time
 * @param maintenance when surfaces were cleaned or restored
 * @param extra       the host's own values, kept and written back untouched
 */
public record FieldBook(
        List<@Valid Site> sites,
        List<@Valid Ring> rings,
        List<@Valid Instrument> instruments,
        List<@Valid Visit> visits,
        List<@Valid Maintenance> maintenance,
        Map<String, Object> extra) {

    /** Copies the collections; absent ones become empty. */
    public FieldBook {
        sites = Copies.list(sites, "sites");
        rings = Copies.list(rings, "rings");
        instruments = Copies.list(instruments, "instruments");
        visits = Copies.list(visits, "visits");
        maintenance = Copies.list(maintenance, "maintenance");
        extra = Copies.extra(extra);
    }

    /**
     * {@return an empty record, all else absent}
     */
    public static FieldBook of() {
        return new FieldBook(List.of(), List.of(), List.of(), List.of(), List.of(), Map.of());
    }

    /**
     * {@return this record with another {@code sites}}
     *
     * @param sites the places where surfaces lie
     */
    public FieldBook withSites(List<Site> sites) {
        return new FieldBook(sites, rings, instruments, visits, maintenance, extra);
    }

    /**
     * {@return this record with another {@code rings}}
     *
     * @param rings the infiltration rings in use
     */
    public FieldBook withRings(List<Ring> rings) {
        return new FieldBook(sites, rings, instruments, visits, maintenance, extra);
    }

    /**
     * {@return this record with another {@code instruments}}
     *
     * @param instruments balances, watches, tapes and thermometers in use
     */
    public FieldBook withInstruments(List<Instrument> instruments) {
        return new FieldBook(sites, rings, instruments, visits, maintenance, extra);
    }

    /**
     * {@return this record with another {@code visits}}
     *
     * @param visits what was done, a visit to one surface at a time
     */
    public FieldBook withVisits(List<Visit> visits) {
        return new FieldBook(sites, rings, instruments, visits, maintenance, extra);
    }

    /**
     * {@return this record with another {@code maintenance}}
     *
     * @param maintenance when surfaces were cleaned or restored
     */
    public FieldBook withMaintenance(List<Maintenance> maintenance) {
        return new FieldBook(sites, rings, instruments, visits, maintenance, extra);
    }

    /**
     * {@return this record with other {@code extra}}
     *
     * @param extra the host's own values, kept and written back untouched
     */
    public FieldBook withExtra(Map<String, Object> extra) {
        return new FieldBook(sites, rings, instruments, visits, maintenance, extra);
    }

    /** {@return a book with nothing in it} */
    public static FieldBook empty() {
        return of();
    }
}
