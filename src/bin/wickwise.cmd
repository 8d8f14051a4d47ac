@echo off
setlocal
set "home=%~dp0.."
if defined JAVA_HOME (set "java=%JAVA_HOME%\bin\java.exe") else (set "java=java")
"%java%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -XX:-UsePerfData -Xshare:auto "-XX:SharedArchiveFile=%home%\lib\wickwise.jsa" -Xlog:disable "-Dwickwise.home=%home%" -cp "%home%\lib\wickwise.jar" org.wickwise.Wickwise %*
