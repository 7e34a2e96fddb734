@echo off
for %%f in ("%~dp0plugins\org.eclipse.equinox.launcher_*.jar") do set LAUNCHER=%%f
start "" javaw -XX:+UseSerialGC -jar "%LAUNCHER%" -nosplash %*
