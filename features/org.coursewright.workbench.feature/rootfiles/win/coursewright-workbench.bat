@echo off
for %%f in ("%~dp0plugins\org.eclipse.equinox.launcher_*.jar") do set LAUNCHER=%%f
start "" javaw -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -jar "%LAUNCHER%" -nosplash %*
