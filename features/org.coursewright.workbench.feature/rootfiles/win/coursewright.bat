@echo off
java -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -cp "%~dp0plugins\*" org.coursewright.cli.Main %*
