// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.validation;

import dev.infiltration.field.Place;
import jakarta.validation.ConstraintValidatorContext.ConstraintViolationBuilder;
import jakarta.validation.ConstraintValidatorContext.ConstraintViolationBuilder.ContainerElementNodeBuilderCustomizableContext;
import jakarta.validation.ConstraintValidatorContext.ConstraintViolationBuilder.LeafNodeBuilderCustomizableContext;
import jakarta.validation.ConstraintValidatorContext.ConstraintViolationBuilder.NodeBuilderCustomizableContext;
import jakarta.validation.ConstraintValidatorContext.ConstraintViolationBuilder.NodeBuilderDefinedContext;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * The last node of a property path, and the nodes that can follow.
 *
 * <p>In a property path the position in a list belongs to the node after the list: {@code visits}, then {@code tests} of
 * the first entry. At the end of the path it is a separate node.
 *
 * @param property adds a property
 * @param bean     adds an entry that is a record
 * @param element  adds an entry that is a value
 * @param end      ends the path
 */
record Node(
        Function<String, NodeBuilderCustomizableContext> property,
        Supplier<LeafNodeBuilderCustomizableContext> bean,
        Supplier<ContainerElementNodeBuilderCustomizableContext> element,
        Runnable end) {

    /** Name of a list entry in a property path. */
    private static final String ELEMENT = "<list element>";

    /** The record that is validated, before any node is added. */
    static Node first(ConstraintViolationBuilder root) {
        return new Node(
                root::addPropertyNode,
                root::addBeanNode,
                () -> root.addContainerElementNode(ELEMENT, List.class, 0),
                root::addConstraintViolation);
    }

    private static Node of(NodeBuilderCustomizableContext node) {
        return new Node(
                node::addPropertyNode,
                node::addBeanNode,
                () -> node.addContainerElementNode(ELEMENT, List.class, 0),
                node::addConstraintViolation);
    }

    private static Node of(NodeBuilderDefinedContext node) {
        return new Node(
                node::addPropertyNode,
                node::addBeanNode,
                () -> node.addContainerElementNode(ELEMENT, List.class, 0),
                node::addConstraintViolation);
    }

    /** Adds a violation at {@code place}, relative to {@code root}. */
    void add(Place place, Place root) {
        if (place.equals(root)) {
            end.run();
        } else if (place.position().isPresent()) {
            to(place.outer(), root).addEntry(place, place.position().getAsInt());
        } else {
            to(place, root).end.run();
        }
    }

    /** The node of a member, with the position of its entry. */
    private Node to(Place member, Place root) {
        Place record = member.outer();
        if (record.equals(root)) {
            return of(property.apply(member.token()));
        }
        OptionalInt position = record.position();
        if (position.isEmpty()) {
            return of(to(record, root).property.apply(member.token()));
        }
        NodeBuilderCustomizableContext node = to(record.outer(), root).property.apply(member.token());
        return of(node.inContainer(List.class, 0).inIterable().atIndex(position.getAsInt()));
    }

    private void addEntry(Place entry, int position) {
        if (entry.isEntryOf(String.class)) {
            element.get().inIterable().atIndex(position).addConstraintViolation();
        } else {
            bean.get().inContainer(List.class, 0).inIterable().atIndex(position).addConstraintViolation();
        }
    }
}
