/** Pages of the guide, read from their Markdown into blocks that a text widget can show. No widgets here. */
package org.coursewright.help.page;
