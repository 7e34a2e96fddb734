/** Commands about what a building costs. */
package org.coursewright.cli.price;
