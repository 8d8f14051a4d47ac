@echo off
setlocal
set "home=%~dp0.."
if defined JAVA_HOME (set "java=%JAVA_HOME%\bin\java.exe") else (set "java=java")
"%java%" -XX:TieredStopAtLevel=1 "-Dwickwise.home=%home%" -cp "%home%\lib\*" org.wickwise.Wickwise %*
