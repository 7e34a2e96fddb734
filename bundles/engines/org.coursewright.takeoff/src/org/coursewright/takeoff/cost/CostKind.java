package org.coursewright.takeoff.cost;

/** What is paid for. */
public enum CostKind {
    /** What stays in the building or is used up. */
    MATERIAL,
    /** Hours of people. */
    LABOUR,
    /** Hours or hire of machines, scaffold and tools. */
    PLANT,
    /** Bringing things to the site and taking waste away. */
    HAULAGE
}
