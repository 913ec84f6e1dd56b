/**
 * Needs, pieces and journeys as a flow: interchangeable pieces run as chains through a network of
 * churches and hours. Knows how to write that as a program in whole numbers and how to read chains
 * out of its solution; knows no names of pieces beyond their class, and solves nothing. Start
 * reading at {@link vestiary.allocation.flow.FlowModel}.
 */
package vestiary.allocation.flow;
